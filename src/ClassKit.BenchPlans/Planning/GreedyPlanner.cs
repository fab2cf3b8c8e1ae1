namespace ClassKit.BenchPlans;

/// <summary>Plans by a simple rule: bread after bread, shift after shift, each as late as what is planned already lets it.</summary>
/// <remarks>Quick and never proven best; it begins a search, and stands in where no solver can be used. It may miss a plan that there is.</remarks>
public static class GreedyPlanner
{
    /// <summary>A plan that keeps every rule, or null if the rule of thumb finds none.</summary>
    /// <param name="bench">The class.</param>
    /// <param name="shifts">In how many shifts the teams work; from 1 to the number of teams.</param>
    public static BenchPlan? Plan(BenchClass bench, int shifts)
    {
        ArgumentNullException.ThrowIfNull(bench);
        var groups = Shift.Of(bench.Teams, shifts);
        // Unhurried before hurried; and demonstrations all at the beginning, or else wherever hands happen to rest.
        return Attempt(bench, groups, Unhurried, showFirst: true) ?? Attempt(bench, groups, Unhurried, showFirst: false)
            ?? Attempt(bench, groups, Hurried, showFirst: true) ?? Attempt(bench, groups, Hurried, showFirst: false);
    }

    private static int Unhurried(BenchStep step) => step.IsHandsOn ? step.MaxMinutes : step.MinMinutes;

    private static int Hurried(BenchStep step) => step.MinMinutes;

    private static BenchPlan? Attempt(BenchClass bench, IReadOnlyList<Shift> shifts, Func<BenchStep, int> minutes, bool showFirst)
    {
        if (bench.Time.WorkMinutes <= 0)
            return null;
        var ledger = new Ledger(bench);
        var shown = new List<PlannedDemonstration>();
        foreach (var demonstration in showFirst ? bench.Demonstrations : [])
        {
            var start = shown.Count > 0 ? shown[^1].End : bench.Time.WorkFrom;
            if (start + demonstration.Minutes > bench.Time.ReadyBy)
                return null;
            shown.Add(new(demonstration, start));
            ledger.Watch(start, start + demonstration.Minutes);
        }

        var planned = new Dictionary<BenchLoad, IReadOnlyList<PlannedStep>>();
        foreach (var at in Enumerable.Range(0, bench.Breads.Count).OrderByDescending(at => bench.Breads[at].ShortestMinutes))
        {
            // The last shift is planned first, and so ends last.
            foreach (var shift in bench.Breads[at].LeftToInstructor ? [new([Maker.Instructor])] : shifts.Reverse())
            {
                if (Latest(bench, [.. shift.Makers.Select(maker => new BenchLoad(maker, at))], minutes, ledger, shown) is not { } loads)
                    return null;
                foreach (var steps in loads)
                    planned[steps[0].Load] = steps;
            }
        }
        var plan = new BenchPlan(bench, shifts, [.. bench.Loads.SelectMany(load => planned[load])], shown);
        return showFirst ? Closer(plan, ledger) : WhereHandsRest(plan, ledger);
    }

    /// <summary>The whole bread without a pause, ending as late as everything else allows.</summary>
    private static IReadOnlyList<IReadOnlyList<PlannedStep>>? Latest(
        BenchClass bench, IReadOnlyList<BenchLoad> loads, Func<BenchStep, int> minutes, Ledger ledger, List<PlannedDemonstration> shown)
    {
        var at = loads[0].Bread;
        var bread = bench.Breads[at];
        var length = bread.Steps.Sum(minutes) + bread.Steps.SkipLast(1).Sum(step => step.Wait.MinMinutes);
        var earliest = Math.Max(bench.Time.WorkFrom, bread.KeepsMinutes is { } keeps ? bench.Time.ReadyBy - keeps - length : 0);
        for (var start = bench.Time.ReadyBy - length; start >= earliest; start--)
        {
            var chains = loads.Select(load => Chain(bread, load, start, minutes)).ToArray();
            var seen = shown.TrueForAll(each => each.Demonstration.Before is not { } before || before.Bread != at || each.End <= chains[0][before.Step].Start);
            if (seen && ledger.TakeAll(chains) is { } taken)
                return taken;
        }
        return null;
    }

    private static PlannedStep[] Chain(BenchBread bread, BenchLoad load, int start, Func<BenchStep, int> minutes)
    {
        var steps = new PlannedStep[bread.Steps.Count];
        for (var at = 0; at < steps.Length; at++)
        {
            steps[at] = new(load, at, start, start + minutes(bread.Steps[at]), null);
            start = steps[at].End + bread.Steps[at].Wait.MinMinutes;
        }
        return steps;
    }

    /// <summary>Shows each thing as late as all are free to watch before they need it; null if they never are.</summary>
    private static BenchPlan? WhereHandsRest(BenchPlan plan, Ledger ledger)
    {
        var shown = new List<PlannedDemonstration>();
        foreach (var demonstration in plan.Class.Demonstrations)
        {
            var start = Latest(plan, demonstration);
            while (start >= plan.Class.Time.WorkFrom && !ledger.IsFreeToWatch(start, start + demonstration.Minutes))
                start--;
            if (start < plan.Class.Time.WorkFrom)
                return null;
            ledger.Watch(start, start + demonstration.Minutes);
            shown.Add(new(demonstration, start));
        }
        return plan with { Demonstrations = shown };
    }

    /// <summary>The last minute at which a demonstration can begin and be over in time.</summary>
    private static int Latest(BenchPlan plan, Demonstration demonstration) => demonstration.Before is { } before
        ? plan.Steps.Where(step => step.Load.Bread == before.Bread && step.Step == before.Step).Min(step => step.Start) - demonstration.Minutes
        : plan.Class.Time.ReadyBy - demonstration.Minutes;

    /// <summary>Moves each demonstration, the last first, as near to what it shows as the teams are free to watch.</summary>
    private static BenchPlan Closer(BenchPlan plan, Ledger ledger)
    {
        var shown = plan.Demonstrations.ToArray();
        for (var at = shown.Length - 1; at >= 0; at--)
        {
            if (shown[at].Demonstration.Before is null)
                continue;
            var (early, minutes) = (shown[at].Start, shown[at].Demonstration.Minutes);
            ledger.Unwatch(early, early + minutes);
            var start = Latest(plan, shown[at].Demonstration);
            while (start > early && !ledger.IsFreeToWatch(start, start + minutes))
                start--;
            ledger.Watch(start, start + minutes);
            shown[at] = shown[at] with { Start = start };
        }
        return plan with { Demonstrations = shown };
    }
}
