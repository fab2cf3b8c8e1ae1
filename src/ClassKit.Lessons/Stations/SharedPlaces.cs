using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.Lessons.Stations;

/// <summary>A kind of equipment that teams share, at the time when most of it is in use.</summary>
/// <param name="Kind">What.</param>
/// <param name="AtOnce">The most in use in any one minute.</param>
/// <param name="From">The minute at which that begins for the first time.</param>
/// <param name="To">The minute at which it ends.</param>
/// <param name="InKitchen">How many the kitchen has; null where nobody has counted.</param>
/// <param name="For">The steps that use it, each as bread and step.</param>
public sealed record SharedPlaces(EquipmentKind Kind, int AtOnce, int From, int To, int? InKitchen, IReadOnlyList<StepOfBread> For)
{
    /// <summary>The demonstrations that use it, by name.</summary>
    public IReadOnlyList<string> ForDemonstrations { get; init; } = [];

    /// <summary>Every kind that a plan uses, in alphabetical order.</summary>
    public static IReadOnlyList<SharedPlaces> Of(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var uses = plan
            .Steps.SelectMany(
                (step, at) =>
                    Method(plan, step).Uses.Select(use => new Use(use, step.Start, Leaves(plan, at), new(step.Load.Bread, step.Step), ""))
            )
            .Concat(
                plan.Demonstrations.SelectMany(shown =>
                    shown.Demonstration.Uses.Select(use => new Use(use, shown.Start, shown.End, null, shown.Demonstration.Name))
                )
            )
            .ToList();
        return
        [
            .. uses.GroupBy(use => use.Of.Kind)
                .OrderBy(kind => kind.Key.One, StringComparer.Ordinal)
                .Select(kind => Peak(kind.Key, [.. kind], plan)),
        ];
    }

    /// <summary>Some pieces in use from one minute to another, for a step or for a demonstration.</summary>
    private sealed record Use(EquipmentCount Of, int From, int To, StepOfBread? Step, string Demonstration);

    private static BenchStep Method(BenchPlan plan, PlannedStep step) => plan.Class.Breads[step.Load.Bread].Steps[step.Step];

    /// <summary>What nobody stands by keeps its place until the next step begins.</summary>
    private static int Leaves(BenchPlan plan, int at)
    {
        var step = plan.Steps[at];
        var isLast = at + 1 == plan.Steps.Count || plan.Steps[at + 1].Load != step.Load;
        return isLast || Method(plan, step).IsHandsOn ? step.End : plan.Steps[at + 1].Start;
    }

    private static SharedPlaces Peak(EquipmentKind kind, IReadOnlyList<Use> uses, BenchPlan plan)
    {
        var (from, most) = uses.Select(use => use.From)
            .Distinct()
            .Order()
            .Select(minute => (minute, InUse(uses, minute)))
            .MaxBy(moment => moment.Item2);
        var to = uses.Select(use => use.To).Where(end => end > from).Order().First(end => InUse(uses, end) != most);
        return new(kind, most, from, to, plan.Class.CountedOf(kind), [.. uses.Select(use => use.Step).OfType<StepOfBread>().Distinct()])
        {
            ForDemonstrations = [.. uses.Select(use => use.Demonstration).Where(name => name.Length > 0).Distinct()],
        };
    }

    private static int InUse(IReadOnlyList<Use> uses, int minute) =>
        uses.Where(use => use.From <= minute && minute < use.To).Sum(use => use.Of.Count);
}
