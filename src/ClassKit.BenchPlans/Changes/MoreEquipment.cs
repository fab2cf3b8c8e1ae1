using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Get more of one kind of equipment.</summary>
/// <param name="Kind">What; a kind that the class counts.</param>
/// <param name="More">How many more; above 0.</param>
public sealed record MoreEquipment(EquipmentKind Kind, int More) : PlanChange
{
    /// <inheritdoc/>
    public override BenchClass Apply(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return bench with
        {
            Equipment = [.. bench.Equipment.Select(count => count.Kind == Kind ? count with { Count = count.Count + More } : count)],
        };
    }

    internal override int Size => 4 + (3 * More);
}
