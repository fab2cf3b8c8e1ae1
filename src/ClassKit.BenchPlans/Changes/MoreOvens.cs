using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Get more ovens like those that there are.</summary>
/// <param name="More">How many more; above 0.</param>
public sealed record MoreOvens(int More) : PlanChange
{
    /// <inheritdoc/>
    public override BenchClass Apply(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return bench with { Ovens = bench.Ovens with { Count = bench.Ovens.Count + More } };
    }

    internal override int Size => 4 + (5 * More);
}
