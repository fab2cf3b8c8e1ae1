using ClassKit.Exercises.Cohorts;

namespace ClassKit.Exercises.Dealing;

/// <summary>Why a corrected exercise no longer fits what was dealt. The set is closed: each has its words in Wording.</summary>
/// <param name="Exercise">The exercise's id.</param>
public abstract record RekeyProblem(string Exercise)
{
    /// <summary>It asks other parts or tells other givens.</summary>
    /// <param name="Exercise">The exercise's id.</param>
    public sealed record OtherQuestions(string Exercise) : RekeyProblem(Exercise);

    /// <summary>A corrected key gives no number for what a student was dealt.</summary>
    /// <param name="Exercise">The exercise's id.</param>
    /// <param name="Part">The part's id.</param>
    /// <param name="Who">The student.</param>
    public sealed record NoNumber(string Exercise, string Part, Student Who) : RekeyProblem(Exercise);
}
