using ClassKit.Exercises.Dealing;

namespace ClassKit.Grading.Rehearsals;

/// <summary>What an invented class showed about a set of exercises and about the grader.</summary>
/// <param name="Dealt">What was dealt.</param>
/// <param name="Parts">Every part in workbook order.</param>
/// <param name="Confusions">Where the grader was wrong, most often first; empty when it never was.</param>
/// <param name="Lookalikes">The misconceptions that could not be told apart; empty when all could.</param>
/// <param name="Times">How long each invented student takes, in minutes; at least one.</param>
public sealed record RehearsalReport(
    DealtClass Dealt,
    IReadOnlyList<RehearsedPart> Parts,
    IReadOnlyList<Confusion> Confusions,
    IReadOnlyList<Lookalike> Lookalikes,
    IReadOnlyList<double> Times
)
{
    /// <summary>How many answers were graded.</summary>
    public int Answers => Parts.Sum(part => part.Answers);

    /// <summary>How many of them as they were made.</summary>
    public int GradedRight => Parts.Sum(part => part.GradedRight);

    /// <summary>How many answers acted out a misconception.</summary>
    public int ActedOut => Parts.Sum(part => part.ActedOut);

    /// <summary>In how many of them the grader named that misconception.</summary>
    public int Named => Parts.Sum(part => part.Named);

    /// <summary>How many right answers were taken for a misconception.</summary>
    public int NamedWrongly => Parts.Sum(part => part.NamedWrongly);

    /// <summary>How long the exercises say that a set takes, in minutes; the mean over students where sets differ.</summary>
    public double Minutes => Dealt.Students.Average(student => Dealt.ExercisesOf(student).Sum(exercise => exercise.Minutes));

    /// <summary>The time after which a share of the class is done, in minutes.</summary>
    /// <param name="share">Above 0, at most 1.</param>
    public double DoneAfter(double share) => Times.Order().ElementAt((int)Math.Ceiling(share * Times.Count) - 1);
}
