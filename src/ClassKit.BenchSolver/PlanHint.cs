using ClassKit.BenchPlans.Plans;
using Google.OrTools.Sat;

namespace ClassKit.BenchSolver;

/// <summary>Tells the solver of a plan to begin from. A plan that does not go with the model is only a worse beginning.</summary>
internal static class PlanHint
{
    public static void Give(CpModel model, BenchPlan plan, PlanTimes times, OvenModel? ovens)
    {
        foreach (var load in times.Loads)
        {
            foreach (var step in plan.StepsOf(new(load.Shift.Makers[0], load.At)))
            {
                model.AddHint(load.Starts[step.Step], step.Start);
                model.AddHint(load.Ends[step.Step], step.End);
            }
            foreach (var bake in load.Bread.Bakes)
                ovens?.Hint(
                    load,
                    bake,
                    [
                        .. load
                            .Shift.Makers.SelectMany(maker => plan.StepsOf(new(maker, load.At)))
                            .Where(step => step.Step == bake.First)
                            .Select(step => step.Oven ?? 0),
                    ]
                );
        }
        foreach (var (start, shown) in times.Demonstrations.Zip(plan.Demonstrations))
            model.AddHint(start, shown.Start);
    }
}
