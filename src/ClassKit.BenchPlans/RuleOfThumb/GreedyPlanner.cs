using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.RuleOfThumb;

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
        if (bench.Time.WorkMinutes <= 0)
            return null;
        var groups = Shift.Of(bench.Teams, shifts);
        // Unhurried before hurried; and demonstrations all at the beginning, or else wherever hands happen to rest.
        return new GreedyAttempt(bench, groups, Unhurried).Plan(showFirst: true) ?? new GreedyAttempt(bench, groups, Unhurried).Plan(showFirst: false)
            ?? new GreedyAttempt(bench, groups, Hurried).Plan(showFirst: true) ?? new GreedyAttempt(bench, groups, Hurried).Plan(showFirst: false);
    }

    private static int Unhurried(BenchStep step) => step.IsHandsOn ? step.MaxMinutes : step.MinMinutes;

    private static int Hurried(BenchStep step) => step.MinMinutes;
}
