namespace ClassKit.BenchPlans.Plans;

/// <summary>
/// Moves a plan to the front of its period. The best plan is a late one, fresh at a tasting that is as late as can be; where that leaves a
/// class idle at the beginning, work, tasting and all come as much sooner.
/// </summary>
internal static class Sooner
{
    /// <summary>A welcome may well run over by as much, so that fewer minutes are left as they are. Common practice, no source.</summary>
    private const int LongestLeft = 15;

    /// <summary>
    /// The same plan, with as many minutes to spare at the end as were idle at the beginning, as far as what heats is hot by then.
    /// </summary>
    public static BenchPlan Of(BenchPlan plan)
    {
        var by = Idle(plan);
        if (by <= LongestLeft)
            return plan;
        var time = plan.Class.Time;
        return plan with
        {
            Class = plan.Class with { Time = time with { SpareMinutes = time.SpareMinutes + by } },
            Steps = [.. plan.Steps.Select(step => step with { Start = step.Start - by, End = step.End - by })],
            Demonstrations = [.. plan.Demonstrations.Select(shown => shown with { Start = shown.Start - by })],
        };
    }

    private static int Idle(BenchPlan plan)
    {
        var bench = plan.Class;
        int Hot(PlannedStep step) => bench.Breads[step.Load.Bread].Steps[step.Step] is { Oven: not null } ? bench.Ovens.HeatUpMinutes : 0;
        return plan
            .Steps.Select(step =>
                step.Start
                - Math.Max(Hot(step), Math.Max(bench.Time.WorkFrom, bench.HotFrom(bench.Breads[step.Load.Bread].Steps[step.Step].Uses)))
            )
            .Concat(
                plan.Demonstrations.Select(shown => shown.Start - Math.Max(bench.Time.WorkFrom, bench.HotFrom(shown.Demonstration.Uses)))
            )
            .Min();
    }
}
