using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>
/// Where things stand is a plan of the deal: under another one the same answers come to the same grades, and no reader is another.
/// </summary>
public sealed class OtherLayoutTests
{
    public static TheoryData<string> Plans { get; } = [.. Known.Keys];

    private static Dictionary<string, PracticePlan> Known =>
        new()
        {
            ["moved right and down"] = new(new(3, 4, 5, 6, 7), 6, OneSheet: false),
            ["other order of columns"] = new(new(1, 2, 4, 3, 5), 1, OneSheet: false),
            ["one sheet"] = PracticePlan.Usual with { OneSheet = true },
            ["sheets named otherwise, as those of earlier deals are"] = PracticePlan.Usual with
            {
                SheetsAsDealt = SmallClass.Dealt.Exercises.ToDictionary(exercise => exercise.Id, exercise => $"{exercise.Id} as it was"),
            },
            ["another first sheet"] = PracticePlan.Usual with { Start = new("Whose it is", 5, 4) },
            ["one sheet, moved"] = new(new(2, 3, 4, 5, 6), 3, OneSheet: true),
        };

    /// <summary>The small class under a plan, as it is read from a folder.</summary>
    private static DealtClass Deal(PracticePlan plan) =>
        DealtJson.Read("dealt.json", DealtJson.Write(SmallClass.Deal(settings: DealSettings.Usual with { Plan = plan }))).Model!;

    /// <summary>Right formulas, numbers, wrong turns and blanks in turn, so that every kind of outcome comes about.</summary>
    private static byte[] Filled(DealtClass dealt, DealtStudent student, Func<DealtClass, DealtStudent, IEnumerable<WorkbookEdit>> besides)
    {
        AnswerWay[] ways = [AnswerWay.Cells, AnswerWay.Typed, AnswerWay.WrongTurn, AnswerWay.Blank];
        var layout = dealt.LayOut();
        var at = 0;
        var answers = dealt
            .ExercisesOf(student)
            .SelectMany(exercise =>
            {
                var sheet = new AnswerSheet(layout.Of(exercise.Id), student);
                return exercise.Parts.Select(part => sheet.Answer(part, ways[at++ % ways.Length])).ToList();
            })
            .ToList();
        return WorkbookFiller.Fill(
            DealtWorkbookWriter.Write(dealt, student),
            [.. Returning.Edits(layout, answers), .. besides(dealt, student)]
        );
    }

    private static List<(string Student, string Exercise, string Part, Outcome Outcome, decimal Points)> Graded(
        PracticePlan plan,
        Func<DealtClass, DealtStudent, IEnumerable<WorkbookEdit>>? besides = null
    )
    {
        var dealt = Deal(plan);
        var returned = ReturnedFiles.Of([
            .. dealt.Students.Select(student => new Upload($"{student.Who.Id}.xlsx", () =>
                new MemoryStream(Filled(dealt, student, besides ?? ((_, _) => [])))
            )),
        ]);
        var grades = GradeClass.Run(new(dealt, returned), Run.Unwatched).Grades;
        Assert.DoesNotContain(grades.Students.SelectMany(student => student.Flags), flag =>
            flag is Flag.GivenOverwritten or Flag.OwnerInferred or Flag.OtherSheet
        );
        return
        [
            .. grades.Students.SelectMany(student =>
                student.Answers.Select(answer => (student.Who.Id, answer.Exercise.Id, answer.Part.Id, answer.Outcome, answer.Points))
            ),
        ];
    }

    private static readonly Lazy<List<(string, string, string, Outcome, decimal)>> Usual = new(() => Graded(PracticePlan.Usual));

    [Fact]
    public void The_answers_come_to_several_outcomes() => Assert.True(Usual.Value.Select(answer => answer.Item4).Distinct().Count() >= 3);

    [Theory]
    [MemberData(nameof(Plans))]
    public void The_same_answers_come_to_the_same_grades(string plan) => Assert.Equal(Usual.Value, Graded(Known[plan]));

    [Theory]
    [MemberData(nameof(Plans))]
    public void Cells_are_found_by_their_tags_where_names_are_lost(string plan) =>
        Assert.Equal(
            Usual.Value,
            Graded(Known[plan], (dealt, student) =>
                [
                    .. dealt.LayOut().GivensOf(student).Select(given => new DeleteName(given.DefinedName)),
                    .. dealt.LayOut().AnswersOf(student).Select(answer => new DeleteName(answer.DefinedName)),
                ]
            )
        );

    [Theory]
    [MemberData(nameof(Plans))]
    public void Cells_are_found_where_a_row_was_put_in_above_them(string plan) =>
        Assert.Equal(
            Usual.Value,
            Graded(Known[plan], (dealt, _) =>
                [new InsertRow(dealt.LayOut().Exercises[0].Sheet, dealt.LayOut().Exercises[0].GivensHeadingRow)]
            )
        );

    [Theory]
    [MemberData(nameof(Plans))]
    public void No_two_things_share_a_cell_or_a_tag_on_a_sheet(string plan)
    {
        var dealt = Deal(Known[plan]);
        var layout = dealt.LayOut();
        List<(string Sheet, string Tag, ClassKit.CellFormulas.Sheets.CellAddress Cell)> places =
        [
            .. layout.Exercises.SelectMany(exercise => exercise.Givens.Select(place => (exercise.Sheet, place.Tag, place.Address))),
            .. layout.Exercises.SelectMany(exercise => exercise.Answers.Select(place => (exercise.Sheet, place.Tag, place.Address))),
        ];
        Assert.Equal(places.Count, places.Select(place => place.Cell).Distinct().Count());
        Assert.Equal(places.Count, places.Select(place => (place.Sheet, place.Tag)).Distinct().Count());
        Assert.Equal(Known[plan].OneSheet ? 1 : 2, places.Select(place => place.Sheet).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void The_start_sheet_says_where_the_exercises_are(string plan)
    {
        var dealt = Deal(Known[plan]);
        var workbook = ReturnedWorkbookReader.Read(DealtWorkbookWriter.Write(dealt, dealt.Students[0])).Workbook!;
        var said = workbook
            .Sheets.Single(sheet => sheet.Name == Known[plan].Start.Sheet)
            .Cells.Values.Where(cell => cell.Stored.IsText)
            .Select(cell => cell.Stored.Text)
            .ToList();
        Assert.Equal(
            Known[plan].OneSheet,
            said.Exists(text => text.StartsWith("All exercises stand below one another", StringComparison.Ordinal))
        );
        Assert.NotEqual(Known[plan].OneSheet, said.Exists(text => text.StartsWith("Every tab", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void Whose_a_workbook_is_is_found_where_every_name_is_lost_and_the_file_is_called_something(string plan)
    {
        var dealt = Deal(Known[plan]);
        var edits = new List<WorkbookEdit> { new DeleteName(StartPlan.StudentIdName), new DeleteName(StartPlan.DealCodeName) };
        var returned = ReturnedFiles.Of([
            new Upload("scan.xlsx", () =>
                new MemoryStream(WorkbookFiller.Fill(DealtWorkbookWriter.Write(dealt, dealt.Students[1]), edits))
            ),
        ]);
        var owner = Assert.Single(GradeClass.Run(new(dealt, returned), Run.Unwatched).Grades.Students, student => student.File is not null);
        Assert.Equal(dealt.Students[1].Who.Id, owner.Who.Id);
        Assert.DoesNotContain(owner.Flags, flag => flag is Flag.OwnerInferred);
    }

    [Fact]
    public void The_usual_plan_is_not_written_down_and_an_impossible_one_is_refused()
    {
        Assert.DoesNotContain("\"layout\"", DealtJson.Write(SmallClass.Dealt), StringComparison.Ordinal);
        var text = DealtJson.Write(
            SmallClass.Deal(settings: DealSettings.Usual with { Plan = PracticePlan.Usual with { OneSheet = true } })
        );
        Assert.Contains(
            "layout",
            Assert
                .Single(DealtJson.Read("dealt.json", text.Replace("\"label\": 2,", "\"label\": 3,", StringComparison.Ordinal)).Problems)
                .Found,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_deal_whose_lists_say_another_cell_than_its_layout_is_refused()
    {
        var text = DealtJson.Write(SmallClass.Dealt);
        var at = SmallClass.AdasAnswers[0].Address.Cell;
        var problems = DealtJson
            .Read("dealt.json", text.Replace($"\"cell\": \"{at}\"", "\"cell\": \"C900\"", StringComparison.Ordinal))
            .Problems;
        Assert.NotEmpty(problems);
        Assert.All(problems, problem => Assert.Contains("the layout has it elsewhere", problem.Found, StringComparison.Ordinal));
    }

    [Fact]
    public void Students_can_be_added_to_a_deal_whose_sheets_are_named_otherwise()
    {
        var earlier = Deal(Known["sheets named otherwise, as those of earlier deals are"]);
        Assert.Equal(DealtJson.Write(earlier), DealtJson.Write(DealtJson.Read("dealt.json", DealtJson.Write(earlier)).Model!));
        Assert.Empty(
            DealDifferences.Between(
                earlier,
                earlier with
                {
                    Students = [],
                },
                new(earlier.Cohort, [.. earlier.Students.Select(student => student.Who), new("dora-lind", "Dora Lind")])
            )
        );
    }
}
