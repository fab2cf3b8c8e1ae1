namespace ClassKit.BenchPlans.Classes;

/// <summary>Who makes a bread. The <c>default</c> is the instructor.</summary>
/// <param name="Team">The team's number, counted from 1; 0 for the instructor.</param>
public readonly record struct Maker(int Team)
{
    /// <summary>The instructor, who is one person.</summary>
    public static Maker Instructor => default;

    /// <summary>A team.</summary>
    /// <param name="number">Counted from 1.</param>
    public static Maker OfTeam(int number) => new(number);

    /// <summary>True for the instructor.</summary>
    public bool IsInstructor => Team == 0;

    /// <summary>In words: <c>team 3</c>, <c>the instructor</c>.</summary>
    public override string ToString() => IsInstructor ? "the instructor" : FormattableString.Invariant($"team {Team}");
}
