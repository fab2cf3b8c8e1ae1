using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.Tempering;

/// <summary>Something that the instructor takes out of the refrigerator, because a step needs it less cold than it is kept.</summary>
/// <param name="Minute">When; below 0 before the class begins.</param>
/// <param name="Heat">What, and how long it stands at the least.</param>
/// <param name="For">The step that needs it.</param>
/// <param name="Start">When that step begins.</param>
/// <param name="Makers">Who begins it then.</param>
public sealed record TakenOut(int Minute, StepHeat Heat, StepOfBread For, int Start, IReadOnlyList<Maker> Makers)
{
    /// <summary>Everything that a plan has taken out, for all who begin a step at one moment together; in the plan's order.</summary>
    public static IReadOnlyList<TakenOut> Of(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. from step in plan.Steps
            from heat in plan.Class.Breads[step.Load.Bread].Steps[step.Step].Heats
            where heat.StandsMinutes > 0
            group step.Load.Maker by (step.Start, heat, For: new StepOfBread(step.Load.Bread, step.Step)) into same
            select new TakenOut(
                plan.FreeAt(same.Key.Start - same.Key.heat.StandsMinutes),
                same.Key.heat,
                same.Key.For,
                same.Key.Start,
                [.. same]
            ),
        ];
    }
}
