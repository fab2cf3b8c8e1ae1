using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Pseudonyms;
using ClassKit.Grading.Results;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Files;
using ClassKit.Wording.Flags;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Pseudonyms;

/// <summary>Reports under pseudonyms are the same facts about somebody else.</summary>
public sealed class NamelessFactsTests
{
    private static readonly Part Part = Parts.Of();
    private static readonly DealtStudent Seat = new(Every.Ada, "workbooks/zq-01.xlsx", []);
    private static readonly DealtClass Dealt = new(
        "lesson",
        "Breads",
        "Test class",
        7,
        new("points", "Points", 0.5m, 1, 0, 0.6m),
        [Parts.Dough(Part)],
        [Seat]
    );

    [Fact]
    public void No_name_is_left_in_any_fact_that_can_be_told()
    {
        var grades = new ClassGrades(
            Dealt,
            [
                new(
                    Every.Ada,
                    GradeStatus.Graded,
                    "Ada Berg.xlsx",
                    [Parts.Graded(Dealt.Exercises[0], Part, Every.Of<AnswerFinding>())],
                    Every.Of<Flag>()
                ),
            ],
            [
                .. Every
                    .Of<Uncounted>()
                    .Select((why, at) => new AccountedFile($"Ada Berg {at}.xlsx", null, null, FileFate.Refused, Every.Ada, why)),
            ]
        );

        var named = Told(grades);
        var nameless = Told(Pseudonymizer.Apply(grades, new(Dealt, new(new byte[32]))));

        Assert.Contains(named, words => words.Contains("Ada", StringComparison.Ordinal));
        Assert.Equal(named.Count, nameless.Count);
        Assert.All(nameless, words => Assert.DoesNotMatch("(?i)ada|berg|zq-01", words));
    }

    private static List<string> Told(ClassGrades grades) =>
        [
            .. grades.Students[0].Flags.Select(flag => FlagWords.Of(flag, grades.Dealt.Exercises)),
            .. grades.Students[0].Answers.Select(FindingWords.Of),
            .. grades.Files.Select(UncountedWords.Of),
        ];
}
