using ClassKit.BenchPlans;

namespace ClassKit.Pages.Benches;

/// <summary>What bakes in an oven over the class.</summary>
internal static class OvenUses
{
    /// <summary>In order of time; loads of one bread that go in together are one bake.</summary>
    public static IReadOnlyList<OvenBake> Of(BenchPlan plan, int oven) =>
    [
        .. plan.Steps.Where(step => step.Oven == oven).GroupBy(step => step.Load)
            .Select(load => (Load: load.Key, Stages: load.OrderBy(step => step.Step).ToArray()))
            .GroupBy(load => (load.Load.Bread, load.Stages[0].Start, load.Stages[^1].End))
            .Select(loads => new OvenBake(
                loads.Key.Bread,
                [.. loads.Select(load => load.Load.Maker)],
                loads.First().Stages,
                plan.Class.Breads[loads.Key.Bread].Steps[loads.First().Stages[0].Step].Oven!.Temperature))
            .OrderBy(bake => bake.Start).ThenBy(bake => bake.Bread),
    ];
}
