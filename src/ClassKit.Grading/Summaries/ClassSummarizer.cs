using ClassKit.Grading.Results;
using ClassKit.Grading.Statistics;

namespace ClassKit.Grading.Summaries;

/// <summary>Reads a class's grades together.</summary>
public static class ClassSummarizer
{
    /// <summary>Counts outcomes and misconceptions per part and ranks what to teach again.</summary>
    /// <param name="grades">Of the class.</param>
    /// <param name="fewestAlike">How many students make a group that used one wrong method.</param>
    public static ClassSummary Summarize(ClassGrades grades, int fewestAlike = WrongMethods.Fewest)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var counts = OutcomeCounts.Of(grades.Students.Where(student => student.Status == GradeStatus.Graded));
        List<PartSummary> parts =
        [
            .. grades.Dealt.Exercises.SelectMany(exercise =>
                exercise.Parts.Select(part => (counts.GetValueOrDefault((exercise.Id, part.Id)) ?? new()).Of(exercise, part))
            ),
        ];
        return new(
            parts,
            [
                .. parts
                    .Where(part => part.MethodShare < grades.Dealt.Marking.TeachAgainBelow)
                    .OrderBy(part => part.MethodShare)
                    .ThenByDescending(part => (double)part.Explained / part.Judged),
            ],
            SkillSummarizer.Summarize(grades, parts),
            TestStatistics.Of(grades)
        )
        {
            WrongMethods = WrongMethods.In(grades, fewestAlike),
            FewestAlike = fewestAlike,
        };
    }
}
