using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>
/// What the judge makes of a fixed corpus of fillings, held against the list that was committed for its version: when judging changes,
/// <see cref="JudgeRecord.CurrentVersion"/> has to change too, or a regraded class would not be told why its outcomes differ.
/// </summary>
/// <remarks>
/// The lists hold our own output on purpose: they say that nothing changed unnoticed, and not that it is right, which other tests do.
/// </remarks>
public sealed class JudgeVersionTests
{
    private static readonly MarkingScheme Marking = DoughTemperatureExercise.Marking with
    {
        UnitSlipShare = 0.5m,
        RoundingSlipShare = 0.6m,
        MisconceptionShare = 0.25m,
    };

    /// <summary>{0} is the key over cells, {1} what it comes to for the student.</summary>
    private static readonly string[] Ways =
    [
        "={0}",
        "=({0})*1",
        "=ROUND({0},0)",
        "=ROUND({0},1)",
        "=ROUND({0},2)",
        "=ROUND({0},-1)",
        "=INT({0})",
        "=ROUNDUP({0},1)",
        "=MROUND({0},5)",
        "={0}+0*want",
        "={1}",
        "={1}*want/want",
        "=want*0+{1}",
        "={0}&\" x\"",
        "=-({0})",
        "=({0})*1000",
        "=({0})/1000",
        "=({0})*100",
        "=({0})*1.8+32",
        "=({0}-32)/1.8",
        "=({0})*0.45359237",
        "=({0})*1.07+1",
        "=want",
        "=want/flour",
        "=1/0",
        "=NOSUCH({0})",
        "=SUM(",
        "=1",
        "=0",
        "{1}",
        "{1} °F",
        "about {1}",
        "x = {1}",
        "{1} oz",
        "0",
        "1",
        "100",
        "?",
        "none",
        "75",
        "148",
        "",
        "=2*want-sum",
        "=water*(tap-temperature)/144",
        "=ROUND(ice,1)/water*share",
        "=ROUND(temperature,0)",
    ];

    /// <summary>What stands in the parts before the one that is filled in one of the ways.</summary>
    private static readonly Dictionary<string, Func<Part, object>> Before = new()
    {
        ["right"] = part => part.Key.Text,
        ["typed wrong"] = _ => 148,
        ["too large"] = part => $"=({part.Key.Text[1..]})*1.21+want",
        ["negative"] = part => $"=-({part.Key.Text[1..]})-want",
        ["words"] = _ => "see my notes",
    };

    private static string List(int version) =>
        Repository.PathOf(
            "tests",
            "ClassKit.Grading.Tests",
            "Judged",
            string.Create(CultureInfo.InvariantCulture, $"version-{version}.csv")
        );

    public static TheoryData<int> Kept =>
        [.. Enumerable.Range(JudgeRecord.EarliestKept, JudgeRecord.CurrentVersion - JudgeRecord.EarliestKept)];

    [Theory]
    [MemberData(nameof(Kept))]
    public void What_an_earlier_version_judged_is_judged_again_as_it_was(int version)
    {
        var committed = File.ReadAllLines(List(version));
        Assert.Equal(committed, Judged(new(version, [])));
    }

    [Fact]
    public void Outcomes_change_only_together_with_the_version()
    {
        var list = List(JudgeRecord.CurrentVersion);
        var lines = Judged(null).ToList();
        if (!File.Exists(list))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(list)!);
            File.WriteAllLines(list, lines);
            Assert.Fail(
                $"{list} was not there and has been written. Compare it with the list of the version before by eye, and commit it with the change that raised JudgeRecord.CurrentVersion."
            );
        }
        var committed = File.ReadAllLines(list);
        var changed = lines.Zip(committed).Where(pair => pair.First != pair.Second).ToList();
        Assert.True(
            changed.Count == 0 && lines.Count == committed.Length,
            $"""
            {changed.Count} of {lines.Count} answers are judged otherwise than version {JudgeRecord.CurrentVersion} of the judge did ({list} has {committed.Length}).
            If that was wanted, raise JudgeRecord.CurrentVersion by one, run this test once more, which writes the new list, and commit it. The first of them (now / before):
            {string.Join('\n', changed.Take(8).Select(pair => $"{pair.First} / {pair.Second}"))}
            """
        );
    }

    private static IEnumerable<string> Judged(JudgeRecord? recorded)
    {
        var dealt = Class with { Marking = Marking };
        var grader = new ClassGrader(dealt, recorded);
        foreach (var (before, written) in Before)
        {
            foreach (var part in DoughTemperatureExercise.Exercise.Parts)
            {
                foreach (var way in Ways)
                {
                    foreach (var student in dealt.Students)
                    {
                        var book = new ReturnedBook(student);
                        foreach (var earlier in DoughTemperatureExercise.Exercise.Parts.TakeWhile(other => other != part))
                            book.Answer(earlier.Id, written(earlier));
                        Fill(book, part, way, student.AnswersOf(DoughTemperatureExercise.Id)[part.Id]);
                        var grade = grader.Judge(book.As($"{student.Who.Id}.xlsx")).Grade!.Answers.Single(answer => answer.Part == part);
                        yield return string.Create(
                            CultureInfo.InvariantCulture,
                            $"{before};{part.Id};{way};{student.Who.Id};{grade.Outcome};{grade.Points:0.##};{grade.Misconception?.Id ?? NearMiss(grade)}"
                        );
                    }
                }
            }
        }
    }

    private static string? NearMiss(AnswerGrade grade) =>
        grade.Findings.OfType<AnswerFinding.NearMiss>().Select(miss => miss.Formula).FirstOrDefault();

    private static void Fill(ReturnedBook book, Part part, string way, double right)
    {
        var text = string.Format(
            CultureInfo.InvariantCulture,
            way,
            part.Key.Text[1..],
            Math.Round(right, 6, MidpointRounding.AwayFromZero)
        );
        if (text.Length == 0)
            return;
        if (text.StartsWith('=') && CellFormulas.Formulas.CellFormula.Parse(text).Formula is not null)
            book.Answer(part.Id, text);
        else if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            book.Answer(part.Id, number);
        else
            book.AnswerInWords(part.Id, text);
    }
}
