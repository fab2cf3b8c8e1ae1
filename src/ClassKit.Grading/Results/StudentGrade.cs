using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>One student's grades.</summary>
/// <param name="Student">Who, and what was dealt.</param>
/// <param name="Status">Whether there was anything to grade.</param>
/// <param name="File">The returned file, relative to the returned folder; null if none.</param>
/// <param name="Answers">A grade for every part, in workbook order; empty unless <see cref="GradeStatus.Graded"/>.</param>
/// <param name="Flags">Facts for the instructor.</param>
public sealed record StudentGrade(
    DealtStudent Student,
    GradeStatus Status,
    string? File,
    IReadOnlyList<AnswerGrade> Answers,
    IReadOnlyList<Flag> Flags)
{
    /// <summary>What the answers earned together.</summary>
    public double Points => Answers.Sum(answer => answer.Points);

    /// <summary>What they could earn together.</summary>
    public double OutOf => Answers.Sum(answer => answer.OutOf);
}
