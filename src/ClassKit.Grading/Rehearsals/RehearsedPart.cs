using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Rehearsals;

/// <summary>How one part went in a rehearsal.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Part">The part.</param>
/// <param name="Answers">How many invented students answered it.</param>
/// <param name="GradedRight">How many of the answers the grader judged as they were made.</param>
/// <param name="StrongShare">Of the abler half of the class, the share that showed the method, 0 to 1; null if none of them was asked, or
/// only the instructor can judge what they answered.</param>
/// <param name="WeakShare">The same of the other half.</param>
public sealed record RehearsedPart(Exercise Exercise, Part Part, int Answers, int GradedRight, double? StrongShare, double? WeakShare)
{
    /// <summary>How many answers acted out a misconception.</summary>
    public required int ActedOut { get; init; }

    /// <summary>In how many of those the grader named that misconception.</summary>
    public required int Named { get; init; }

    /// <summary>How many right answers were taken for a misconception.</summary>
    public required int NamedWrongly { get; init; }

    /// <summary>How well the part tells the two halves apart: the difference of their shares, -1 to 1.</summary>
    public double? Separation => StrongShare - WeakShare;
}
