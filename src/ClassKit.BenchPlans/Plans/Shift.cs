using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Plans;

/// <summary>Makers who do the same thing in the same minute, so that an instructor can follow them at one glance.</summary>
/// <param name="Makers">Some teams, or the instructor alone.</param>
public sealed record Shift(IReadOnlyList<Maker> Makers)
{
    /// <summary>True for the instructor's own work.</summary>
    public bool IsInstructor => Makers[0].IsInstructor;

    /// <summary>Those of them who make a bread; null if none of them does.</summary>
    public Shift? Making(BenchBread bread)
    {
        ArgumentNullException.ThrowIfNull(bread);
        if (bread.LeftToInstructor != IsInstructor)
            return null;
        if (IsInstructor || bread.Teams is not { } teams)
            return this;
        Maker[] makers = [.. Makers.Where(maker => teams.Contains(maker.Team))];
        return makers.Length == 0 ? null : new(makers);
    }

    /// <summary>The teams in so many shifts, in the order of their numbers, as even as can be, the larger ones first.</summary>
    /// <param name="teams">How many teams; at least 1.</param>
    /// <param name="count">How many shifts; from 1 to <paramref name="teams"/>.</param>
    public static IReadOnlyList<Shift> Of(int teams, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, teams);
        var shifts = new List<Shift>();
        var next = 1;
        for (var at = 0; at < count; at++)
        {
            var size = (teams / count) + (at < teams % count ? 1 : 0);
            shifts.Add(new([.. Enumerable.Range(next, size).Select(Maker.OfTeam)]));
            next += size;
        }
        return shifts;
    }
}
