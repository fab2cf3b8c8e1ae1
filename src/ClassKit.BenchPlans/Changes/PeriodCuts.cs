using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Solving;
using ClassKit.BenchPlans.Trials;

namespace ClassKit.BenchPlans.Changes;

/// <summary>What an instructor can move out of a class or take out of the teams' hands so that the rest fits the period as it is.</summary>
/// <remarks>
/// A longer period, another oven and a warmer rise are not among it: the first two cost, the last changes the bread. See
/// <see cref="BenchPlanning.Changes"/>.
/// </remarks>
public static class PeriodCuts
{
    /// <summary>The least that is enough; null if nothing is, or nothing is found.</summary>
    /// <param name="bench">A class for which there is no plan.</param>
    /// <param name="solver">What finds plans.</param>
    /// <param name="settings">How hard to look.</param>
    public static PlanChange? Least(BenchClass bench, IPlanSolver solver, PlannerSettings settings)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(solver);
        ArgumentNullException.ThrowIfNull(settings);
        // What is cooked first is a wish, and nothing is cut for it.
        bench = bench with { CookedFirst = [], ShownBehind = [] };
        return Candidates(bench)
            .Where(change => MayFit(change.Apply(bench)))
            .FirstOrDefault(change => new Trial(solver, settings, change.Apply(bench)).Plan is not null);
    }

    /// <summary>
    /// Every way to do none, some or all breads ahead as far as they keep, with or without one that is left to the instructor; the smallest
    /// first.
    /// </summary>
    private static IEnumerable<PlanChange> Candidates(BenchClass bench)
    {
        IEnumerable<IReadOnlyList<PlanChange>> sets =
        [
            [],
        ];
        for (var at = 0; at < bench.Breads.Count; at++)
        {
            var ahead = DoneAhead(bench, at).ToList();
            sets = sets.SelectMany(set => ahead.Select(IReadOnlyList<PlanChange> (change) => [.. set, change]).Prepend(set)).ToList();
        }
        var left = Enumerable
            .Range(0, bench.Breads.Count)
            .Where(at => !bench.Breads[at].LeftToInstructor)
            .Select(PlanChange (at) => new LeaveToInstructor(at))
            .ToList();
        return sets.Concat(sets.SelectMany(set => left.Select(IReadOnlyList<PlanChange> (change) => [.. set, change])))
            .Where(set => set.Count > 0)
            .Select(set => set.Count == 1 ? set[0] : new SeveralChanges(set))
            .OrderBy(change => change.Size);
    }

    private static IEnumerable<PlanChange> DoneAhead(BenchClass bench, int at) =>
        Enumerable
            .Range(0, bench.Breads[at].Steps.Count - 1)
            .Where(step => bench.Breads[at].Steps[step].MayBeDoneAhead)
            .Select(step => new DoAhead(at, step));

    /// <summary>No solver is asked where a bread alone takes longer than there is.</summary>
    private static bool MayFit(BenchClass bench) => bench.Breads.All(bread => bread.ShortestMinutes <= bench.Time.WorkMinutes);
}
