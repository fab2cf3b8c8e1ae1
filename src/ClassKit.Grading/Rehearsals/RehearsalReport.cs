using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>What an invented class showed about a set of exercises and about the grader.</summary>
/// <param name="Dealt">What was dealt.</param>
/// <param name="Parts">Every part in workbook order.</param>
/// <param name="Confusions">Where the grader was wrong, most often first; empty when it never was.</param>
public sealed record RehearsalReport(DealtClass Dealt, IReadOnlyList<RehearsedPart> Parts, IReadOnlyList<Confusion> Confusions)
{
    /// <summary>How many answers were graded.</summary>
    public int Answers => Parts.Sum(part => part.Answers);

    /// <summary>How many of them as they were made.</summary>
    public int GradedRight => Parts.Sum(part => part.GradedRight);

    /// <summary>How long a set is expected to take a student, in minutes; the mean over students where sets differ.</summary>
    public double Minutes => Dealt.Students.Average(student => Dealt.ExercisesOf(student).Sum(exercise => exercise.Minutes));
}
