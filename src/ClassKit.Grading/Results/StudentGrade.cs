using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;

namespace ClassKit.Grading.Results;

/// <summary>One student's grades.</summary>
/// <param name="Who">Whose grades they are; what was dealt to them is in <see cref="DealtClass.SeatOf"/>.</param>
/// <param name="Status">Whether there was anything to grade.</param>
/// <param name="File">The returned file, relative to the returned folder; null if none.</param>
/// <param name="Answers">A grade for every part, in workbook order; empty unless <see cref="GradeStatus.Graded"/> or marked by hand in
/// corrections.</param>
/// <param name="Flags">Facts for the instructor.</param>
public sealed record StudentGrade(
    Student Who,
    GradeStatus Status,
    string? File,
    IReadOnlyList<AnswerGrade> Answers,
    IReadOnlyList<Flag> Flags
)
{
    /// <summary>True if there are points to show, by grading or by the instructor's hand.</summary>
    public bool HasPoints => Answers.Count > 0;

    /// <summary>True if it was answered on paper, and the instructor typed it.</summary>
    public bool IsFromPaper => Answers.Any(answer => answer.Paper is not null);

    /// <summary>
    /// True where a workbook came back as it was handed out, nothing in it, and the instructor has not said that it is meant so: nobody knows
    /// yet whether it is handed in. Any correction of theirs says it.
    /// </summary>
    public bool CameBackEmpty =>
        Status == GradeStatus.Graded
        && Answers.Count > 0
        && Answers.All(answer => answer is { Outcome: Outcome.Blank, Correction: null, Paper: null });

    /// <summary>That the work came late; null if it did not, or if nobody asked.</summary>
    public Late? Late { get; init; }

    /// <summary>How the marking scheme makes a total of the answers.</summary>
    public TotalRule Rule { get; init; } = TotalRule.Everything;

    /// <summary>
    /// Earned and possible as an early record states them, which does not say how they were made; null where they follow from the answers.
    /// </summary>
    public (decimal Points, decimal OutOf)? Stated { get; init; }

    /// <summary>What the answers come to, before anything is taken off for lateness.</summary>
    public Total Total => Total.Of(Answers, Rule);

    /// <summary>The total that was earned, less what lateness costs, to a hundredth of a point, ties away from zero.</summary>
    public decimal Points => Stated?.Points ?? Math.Round(Total.Points * (1 - (Late?.Off ?? 0)), 2, MidpointRounding.AwayFromZero);

    /// <summary>The total that could be earned.</summary>
    public decimal OutOf => Stated?.OutOf ?? Total.OutOf;
}
