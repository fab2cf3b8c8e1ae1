using ClassKit.Exercises.Cohorts;

namespace ClassKit.Terms.Bench;

/// <summary>
/// What a form leaves open, or says in a way that cannot be used. Whoever takes in all of them has taken in every gap there is.
/// </summary>
public abstract record BenchGap
{
    private BenchGap() { }

    /// <summary>A student has levels in some criteria and none in others.</summary>
    /// <param name="Student">Who.</param>
    /// <param name="Criteria">The names of those without.</param>
    public sealed record NoLevel(Student Student, IReadOnlyList<string> Criteria) : BenchGap;

    /// <summary>A level that the rubric does not have.</summary>
    /// <param name="Field">Where it stands.</param>
    /// <param name="Found">What stands there.</param>
    public sealed record UnknownLevel(string Field, string Found) : BenchGap;

    /// <summary>A team that there is not.</summary>
    /// <param name="Student">Whose.</param>
    /// <param name="Found">What stands there.</param>
    /// <param name="Teams">How many there are.</param>
    public sealed record NoTeam(Student Student, string Found, int Teams) : BenchGap;
}
