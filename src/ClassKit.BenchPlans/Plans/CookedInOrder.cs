using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Plans;

/// <summary>Whether what is to be cooked first is.</summary>
internal static class CookedInOrder
{
    /// <summary>True if nothing of what is planned so far is against an order.</summary>
    public static bool Keeps(BenchClass bench, CookedFirst order, IReadOnlyList<PlannedStep> planned)
    {
        if (order.LastStep(bench) is not { } last || order.FirstStep(bench) is not { } first)
            return true;
        PlannedStep[] then = [.. planned.Where(step => step.Load.Bread == order.Before && step.Step == first)];
        return planned
            .Where(step => step.Load.Bread == order.Bread && step.Step == last)
            .All(step => then.All(other => (order.EachForItself && other.Load.Maker != step.Load.Maker) || step.End <= other.Start));
    }

    /// <summary>True if what is to be shown behind a bread is, in a plan.</summary>
    public static bool Keeps(BenchPlan plan, ShownBehind order) =>
        order.LastStep(plan.Class) is not { } last
        || plan.Steps.Where(step => step.Load.Bread == order.Bread && step.Step == last)
            .All(step => step.End <= plan.Demonstrations[order.Demonstration].Start);
}
