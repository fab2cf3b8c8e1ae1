using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Solving;

/// <summary>A group of constraints that an instructor would call one thing.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Bread">Of <see cref="RuleKind.Windows"/>: which bread, counted from 0.</param>
/// <param name="Equipment">Of <see cref="RuleKind.Equipment"/>: which kind.</param>
public sealed record PlanRule(RuleKind Kind, int Bread = -1, EquipmentKind? Equipment = null)
{
    /// <summary>Every rule of a class, those first that are the least worth naming if others explain a conflict as well.</summary>
    public static IReadOnlyList<PlanRule> Of(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return
        [
            .. bench.Demonstrations.Count > 0 ? [new PlanRule(RuleKind.Demonstrations)] : Array.Empty<PlanRule>(),
            new(RuleKind.People),
            .. bench.Breads.Select((_, at) => new PlanRule(RuleKind.Windows, at)),
            .. bench.Equipment.Select(count => new PlanRule(RuleKind.Equipment, Equipment: count.Kind)),
            .. bench.Breads.Any(bread => bread.Bake is not null) ? [new PlanRule(RuleKind.Ovens)] : Array.Empty<PlanRule>(),
            new(RuleKind.Period),
        ];
    }
}
