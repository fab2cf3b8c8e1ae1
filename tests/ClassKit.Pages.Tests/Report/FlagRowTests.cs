using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Pages.Report;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Report;

/// <summary>What two students have in common is found of each of them, and is one fact to whoever reads of it.</summary>
public sealed class FlagRowTests
{
    private static readonly IReadOnlyList<Student> Who = [.. SampleClass.Grades.Students.Take(5).Select(student => student.Who)];

    [Fact]
    public void Three_who_wrote_alike_have_one_row_and_others_who_did_one_of_their_own()
    {
        var rows = Rows(
            [Alike(1), Alike(2), Author(3)],
            [Alike(0), Alike(2)],
            [Alike(0), Alike(1)],
            [Author(0), new Flag.OtherSheet("Hydration", new("Sheet4"))],
            []
        );

        Assert.Equal(
            ["0 1 2", "0 3", "3"],
            rows.Select(row => string.Join(' ', row.Students.Select(name => Who.Select(student => student.Shown).ToList().IndexOf(name))))
        );
        Assert.Contains("that all 3 got wrong hold exactly the same", rows[0].Words(SampleClass.Dealt.Exercises), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_pairs_who_have_nothing_in_common_stay_apart() =>
        Assert.Equal(2, Rows([Alike(1)], [Alike(0)], [Alike(3)], [Alike(2)]).Count);

    private static IReadOnlyList<FlagRow> Rows(params IReadOnlyList<Flag>[] flags) =>
        FlagRow.Of(
            SampleClass.Grades with
            {
                Students = [.. flags.Select((own, at) => new StudentGrade(Who[at], GradeStatus.Graded, "one.xlsx", [], own))],
            }
        );

    private static Flag.SharedMistakes Alike(int other) =>
        new(Who[other], [(SampleClass.Dealt.Exercises[0].Id, SampleClass.Dealt.Exercises[0].Parts[0].Id)], 3, 0.01);

    private static Flag.SharedAuthor Author(int other) => new([Who[other]]);
}
