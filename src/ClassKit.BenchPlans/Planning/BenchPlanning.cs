using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Conflicts;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.Planning;

/// <summary>What came of planning a class.</summary>
/// <param name="Plan">The plan; null if there is none.</param>
/// <param name="Quality">How good it is; null without a plan.</param>
/// <param name="Conflict">What cannot be had together; null if there is a plan, or if it is not known whether there is one.</param>
/// <param name="Changes">Changes with each of which there is a plan, the smallest first; empty if there is one already.</param>
/// <param name="Notice">What the reader must know besides; null for nothing.</param>
public sealed record BenchPlanning(
    BenchPlan? Plan,
    PlanQuality? Quality,
    PlanConflict? Conflict,
    IReadOnlyList<PlanChange> Changes,
    PlanNotice? Notice
)
{
    /// <summary>
    /// How many minutes more would be enough without any other change: with them a plan was found. Null where there is a plan, or where
    /// none was found however long the period.
    /// </summary>
    public int? MissingMinutes { get; init; }

    /// <summary>
    /// In what the plan treats members of a series unlike each other, beyond what the series changes; empty without a plan.
    /// </summary>
    public IReadOnlyList<SeriesDifference> Unlike => Plan is null ? [] : SeriesDifferences.In(Plan);

    /// <summary>What the plan does not cook before something else, as was asked for; empty without a plan.</summary>
    public IReadOnlyList<CookedFirst> NotCookedFirst =>
        Plan is null ? [] : [.. Plan.Class.CookedFirst.Where(order => !CookedInOrder.Keeps(Plan.Class, order, Plan.Steps))];

    /// <summary>What the plan shows before something that should be cooked first; empty without a plan.</summary>
    public IReadOnlyList<ShownBehind> NotShownBehind =>
        Plan is null ? [] : [.. Plan.Class.ShownBehind.Where(order => !CookedInOrder.Keeps(Plan, order))];

    /// <summary>The same, for a class that asked for what the planning left alone.</summary>
    internal BenchPlanning AskedFor(BenchClass bench) =>
        Plan is null
            ? this
            : this with
            {
                Plan = Plan with { Class = Plan.Class with { CookedFirst = bench.CookedFirst, ShownBehind = bench.ShownBehind } },
            };

    internal static BenchPlanning Of(BenchPlan plan, PlanWeights weights, double bound, bool isProven)
    {
        var cost = PlanCost.Of(plan);
        return new(Sooner.Of(plan), new(cost, cost.Weighed(weights), bound, isProven), null, [], null);
    }

    internal static BenchPlanning Without(PlanNotice notice) => new(null, null, null, [], notice);
}
