using ClassKit.Grading.Results;
using ClassKit.Grading.Statistics;

namespace ClassKit.Grading.Summaries;

/// <summary>Reads a class's grades skill by skill.</summary>
internal static class SkillSummarizer
{
    /// <summary>
    /// Every skill, in the order in which the workbook first asks it. Answers left to the instructor count on neither side.
    /// </summary>
    public static IReadOnlyList<SkillSummary> Summarize(ClassGrades grades, IReadOnlyList<PartSummary> parts) =>
        [.. parts.GroupBy(part => part.Exercise.Skill).Select(skill => Summarize(skill.Key, [.. skill], grades))];

    private static SkillSummary Summarize(string skill, IReadOnlyList<PartSummary> parts, ClassGrades grades)
    {
        var asked = grades
            .Students.Where(student => student.Status == GradeStatus.Graded)
            .Select(student =>
                (
                    Student: student,
                    Share: ShareOf([.. student.Answers.Where(answer => answer.Exercise.Skill == skill)]),
                    Whole: ShareOf(student.Answers)
                )
            )
            .Where(student => student.Share is not null)
            .ToList();
        List<decimal> shares = [.. asked.Select(student => student.Share!.Value)];
        return new(
            skill,
            parts,
            asked.Count,
            asked.Count == 0 ? null : (double)shares.Average(),
            asked.Count == 0 ? null : ExtremeGroups.Of([.. asked.Select(student => student.Whole!.Value)])?.Difference(shares),
            [.. asked.Where(student => student.Share < grades.Dealt.Marking.TeachAgainBelow).Select(student => student.Student)]
        );
    }

    private static decimal? ShareOf(IReadOnlyList<AnswerGrade> answers) =>
        answers.Sum(answer => answer.OutOf) is > 0 and var most ? answers.Sum(answer => answer.Points) / most : null;
}
