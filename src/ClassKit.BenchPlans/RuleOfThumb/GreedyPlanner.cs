using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.RuleOfThumb;

/// <summary>
/// Plans by a simple rule: bread after bread, shift after shift, series together, each as late as what is planned already lets it.
/// </summary>
/// <remarks>
/// Quick and never proven best; it begins a search, and stands in where no solver can be used. It may miss a plan that there is.
/// </remarks>
public static class GreedyPlanner
{
    /// <summary>A plan that keeps every rule, or null if the rule of thumb finds none.</summary>
    /// <param name="bench">The class.</param>
    /// <param name="shifts">In how many shifts the teams work; from 1 to the number of teams.</param>
    public static BenchPlan? Plan(BenchClass bench, int shifts)
    {
        ArgumentNullException.ThrowIfNull(bench);
        if (bench.Time.WorkMinutes <= 0)
            return null;
        var groups = Shift.Of(bench.Teams, shifts);
        var series = BenchSeries.Of(bench);
        // Series together before each bread by itself; unhurried before hurried; and demonstrations all at the beginning, or else wherever
        // hands happen to rest.
        return (series.Count > 0 ? Plan(bench, groups, series) : null) ?? Plan(bench, groups, []);
    }

    /// <summary>
    /// The plans that the rule of thumb finds, the one in the fewest shifts first; each is looked for when it is asked for.
    /// </summary>
    /// <param name="bench">The class.</param>
    public static IEnumerable<BenchPlan> Plans(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return Enumerable.Range(1, bench.Teams).Select(shifts => Plan(bench, shifts)).OfType<BenchPlan>();
    }

    private static BenchPlan? Plan(BenchClass bench, IReadOnlyList<Shift> groups, IReadOnlyList<BenchSeries> series) =>
        new[] { Unhurried, (Func<BenchStep, int>)Hurried }
            .SelectMany(minutes =>
                new[] { true, false }.Select(showFirst => new GreedyAttempt(bench, groups, minutes, series).Plan(showFirst))
            )
            .FirstOrDefault(plan => plan is not null);

    private static int Unhurried(BenchStep step) => step.IsHandsOn ? step.MaxMinutes : step.MinMinutes;

    private static int Hurried(BenchStep step) => step.MinMinutes;
}
