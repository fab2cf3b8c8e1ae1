using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Several changes at once, where none of them alone is enough.</summary>
/// <param name="Changes">In the order in which they are applied; two or more.</param>
public sealed record SeveralChanges(IReadOnlyList<PlanChange> Changes) : PlanChange
{
    /// <inheritdoc/>
    public override BenchClass Apply(BenchClass bench) => Changes.Aggregate(bench, (changed, change) => change.Apply(changed));

    /// <inheritdoc/>
    internal override int Size => Changes.Sum(change => change.Size);
}
