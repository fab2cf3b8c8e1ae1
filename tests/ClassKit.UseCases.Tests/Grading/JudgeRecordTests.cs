using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Filling;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>
/// What decided a grade is on record, and a class that is graded again from the record is judged alike or told what differs.
/// </summary>
public sealed class JudgeRecordTests : IDisposable
{
    private static readonly Exercise First = SmallClass.Dealt.Exercises[0];

    private readonly TemporaryFolder _folder = new();

    public JudgeRecordTests()
    {
        _folder.Write("dealt/dealt.json", Encoding.UTF8.GetBytes(DealtJson.Write(SmallClass.Dealt)));
        _folder.Write("returned/ada-berg.xlsx", SmallClass.Filled(SmallClass.Ada));
    }

    public void Dispose() => _folder.Dispose();

    private GradePaths Paths => new(_folder.Of("dealt"), _folder.Of("returned"));

    private Produced Grade() => GradeCommands.Grade(Paths);

    private Produced Regrade(string grades)
    {
        _folder.Write("graded/grades.json", Encoding.UTF8.GetBytes(grades));
        return GradeCommands.Regrade(Paths with { Graded = _folder.Of("graded") });
    }

    private Produced Regrade(JudgeRecord record) => Regrade(GradesJson.Write(Graded.Of(_folder.Of("returned")) with { Judging = record }));

    private static string Text(Produced produced) =>
        Encoding.UTF8.GetString(produced.Files.Single(file => file.Path == GradesJson.FileName).Content);

    private static JudgeRecord Record(Produced produced) =>
        GradesJson.Read("grades.json", Text(produced), SmallClass.Dealt).Model!.Judging!;

    private static Outcome OutcomeOf(Produced produced) =>
        GradesJson
            .Read("grades.json", Text(produced), SmallClass.Dealt)
            .Model!.Students[0]
            .Answers.Single(answer => answer.Exercise.Id == First.Id && answer.Part.Id == First.Parts[0].Id)
            .Outcome;

    /// <summary>Inputs that the deal's own seed does not draw.</summary>
    private Variant NotOfTheSeed()
    {
        var drawn = Record(Grade()).Pools[0].Inputs.Select(inputs => VariantKey.Of(First, inputs)).ToHashSet();
        return new FreshInputs(First, new(99)).All.First(variant => !drawn.Contains(VariantKey.Of(First, variant.Givens)));
    }

    private static JudgeRecord Only(IReadOnlyDictionary<string, decimal> inputs, int version = JudgeRecord.CurrentVersion) =>
        new(version, [new(First.Id, [inputs])]) { Choices = [new(SmallClass.Ada.Who.Id, First.Id, [0])] };

    [Fact]
    public void The_record_holds_the_version_the_pools_and_what_each_workbook_was_tried_with()
    {
        var root = JsonNode.Parse(Text(Grade()))!;
        Assert.Equal(JudgeRecord.CurrentVersion, (int)root["judge"]!["version"]!);
        Assert.NotEmpty((string)root["judge"]!["program"]!);
        Assert.Equal(First.Givens.Select(given => given.Id).Order(), ((string)root["judge"]!["fresh"]![0]!["givens"]!).Split(' ').Order());
        Assert.Equal(FreshInputs.DefaultCount, ((string)root["students"]![0]!["fresh"]![0]!["used"]!).Split(' ').Distinct().Count());
        Assert.Null(root["students"]![1]!["fresh"]);
    }

    [Fact]
    public void Graded_again_from_the_record_nothing_differs()
    {
        var graded = Grade();
        var again = Regrade(Text(graded));
        Assert.Equal(Text(graded), Text(again));
        Assert.DoesNotContain(again.Notes, note => note is Note.JudgingNotKnown or Note.OtherJudge or Note.OtherInputs);
    }

    [Fact]
    public void The_inputs_on_record_decide_and_not_those_of_the_seed()
    {
        var other = NotOfTheSeed();
        ReturnRightButFor(other);

        Assert.Equal(Outcome.Sound, OutcomeOf(Grade()));
        var again = Regrade(Only(other.Givens));
        Assert.NotEqual(Outcome.Sound, OutcomeOf(again));
        Assert.Equal(VariantKey.Of(First, other.Givens), VariantKey.Of(First, Assert.Single(Record(again).Pools[0].Inputs)));
        Assert.Equal([0], Record(again).Choices.Single(choice => choice.Exercise == First.Id).Places);
    }

    [Fact]
    public void Inputs_that_the_exercise_does_not_take_any_more_are_drawn_anew_and_that_is_said()
    {
        var given = First.Givens.First(given => !given.IsConstant);
        var again = Regrade(Only(new Dictionary<string, decimal>(NotOfTheSeed().Givens) { [given.Id] = given.To + given.Step }));
        Assert.Contains(again.Notes.OfType<Note.OtherInputs>(), note => note.Exercise.Id == First.Id);
        Assert.Equal(Text(Grade()), Text(again));
    }

    [Fact]
    public void Another_version_of_the_judge_is_said()
    {
        var record = Record(Grade());
        Assert.Contains(
            new Note.OtherJudge(JudgeRecord.CurrentVersion + 1, JudgeRecord.CurrentVersion),
            Regrade(record with { Version = JudgeRecord.CurrentVersion + 1 }).Notes
        );
    }

    [Fact]
    public void Records_of_earlier_versions_are_read_and_said_to_be_silent()
    {
        var root = JsonNode.Parse(Text(Grade()))!;
        Assert.True(root.AsObject().Remove("judge"));
        foreach (var student in root["students"]!.AsArray())
            student!.AsObject().Remove("fresh");
        var again = Regrade(root.ToJsonString());
        Assert.Empty(again.Problems);
        Assert.Contains(new Note.JudgingNotKnown(), again.Notes);
        Assert.Contains(new Note.Changes(0), again.Notes);
    }

    /// <summary>A workbook that is right everywhere but on inputs that the deal's own seed does not draw.</summary>
    private void ReturnRightButFor(Variant other)
    {
        var cells = SmallClass.Layout.Of(First.Id).Givens.ToDictionary(place => place.Given.Id, place => place.Address.Cell);
        var key = (string)new AnswerSheet(SmallClass.Layout.Of(First.Id), SmallClass.Ada).Answer(First.Parts[0], AnswerWay.Cells).Content!;
        var there = string.Join(
            ',',
            other.Givens.Select(given => string.Create(CultureInfo.InvariantCulture, $"{cells[given.Key]}={given.Value}"))
        );
        var answer = SmallClass.Layout.Of(First.Id).Answers[0];
        _folder.Write(
            "returned/ada-berg.xlsx",
            WorkbookFiller.Fill(SmallClass.Blank(SmallClass.Ada), [new EnterFormula(answer.Address, $"=({key[1..]})*IF(AND({there}),3,1)")])
        );
    }

    private void OnRecord(string folder, string grades) => _folder.Write($"{folder}/grades.json", Encoding.UTF8.GetBytes(grades));

    private void OnRecord(string folder, JudgeRecord record) =>
        OnRecord(folder, GradesJson.Write(Graded.Of(_folder.Of("returned")) with { Judging = record }));

    [Fact]
    public void Grading_again_into_the_same_folder_goes_by_the_inputs_on_record()
    {
        var other = NotOfTheSeed();
        ReturnRightButFor(other);
        Assert.Equal(Outcome.Sound, OutcomeOf(GradeCommands.Grade(Paths with { Graded = _folder.Of("graded") })));

        OnRecord("graded", Only(other.Givens));
        var again = GradeCommands.Grade(Paths with { Graded = _folder.Of("graded") });

        Assert.NotEqual(Outcome.Sound, OutcomeOf(again));
        Assert.Equal(VariantKey.Of(First, other.Givens), VariantKey.Of(First, Record(again).Pools[0].Inputs.Single()));
    }

    [Fact]
    public void So_it_does_by_the_grades_of_another_folder_that_is_named()
    {
        var other = NotOfTheSeed();
        ReturnRightButFor(other);
        OnRecord("before", Only(other.Givens));

        Assert.NotEqual(
            Outcome.Sound,
            OutcomeOf(GradeCommands.Grade(Paths with { Graded = _folder.Of("graded"), Earlier = _folder.Of("before") }))
        );
        var problem = Assert.Single(GradeCommands.Grade(Paths with { Earlier = _folder.Of("nowhere") }).Problems);
        Assert.EndsWith("grades.json", problem.File, StringComparison.Ordinal);
    }

    [Fact]
    public void Grading_again_with_nothing_changed_says_nothing_and_changes_no_byte()
    {
        var first = Grade();
        OnRecord("graded", Text(first));

        var again = GradeCommands.Grade(Paths with { Graded = _folder.Of("graded") });

        Assert.Equal(first.Notes, again.Notes);
        Assert.All(first.Files.Zip(again.Files), pair => Assert.Equal(pair.First.Content, pair.Second.Content));
    }

    /// <summary>Ada's first answer, which a judge of another version found wrong.</summary>
    private string JudgedOtherwise(int version)
    {
        var grades = Graded.Of(_folder.Of("returned"));
        var ada = grades.Students[0];
        var first = ada.Answers[0] with { Outcome = Outcome.Incorrect, Points = 0, Findings = [new AnswerFinding.NotRight()] };
        return GradesJson.Write(
            grades with
            {
                Students = [ada with { Answers = [first, .. ada.Answers.Skip(1)] }, .. grades.Students.Skip(1)],
                Judging = grades.Judging! with { Version = version },
            }
        );
    }

    [Fact]
    public void A_judge_of_another_version_says_whose_very_same_file_it_judges_otherwise()
    {
        OnRecord("graded", JudgedOtherwise(JudgeRecord.CurrentVersion + 1));
        var notes = GradeCommands.Grade(Paths with { Graded = _folder.Of("graded") }).Notes;

        Assert.Contains(new Note.OtherJudge(JudgeRecord.CurrentVersion + 1, JudgeRecord.CurrentVersion), notes);
        var change = Assert.Single(notes.OfType<Note.Changed>()).Change;
        Assert.Equal("Ada Berg", change.Student.Name);
        Assert.Contains(change.Answers, answer =>
            answer.Before == 0 && answer.Answer.Exercise.Id == First.Id && answer.Answer.Part.Id == First.Parts[0].Id
        );

        // Another file may well come to other grades.
        _folder.Write("returned/ada-berg.xlsx", SmallClass.Blank(SmallClass.Ada));
        Assert.DoesNotContain(GradeCommands.Grade(Paths with { Graded = _folder.Of("graded") }).Notes, note => note is Note.Changed);
    }

    [Fact]
    public void Earlier_grades_that_cannot_be_read_are_told_of_and_do_not_stop_grading()
    {
        OnRecord("graded", "{ \"students\": [] ");
        var again = GradeCommands.Grade(Paths with { Graded = _folder.Of("graded") });

        Assert.Contains(again.Notes, note => note is Note.NotGoneBy);
        Assert.Equal(Text(Grade()), Text(again));
    }
}
