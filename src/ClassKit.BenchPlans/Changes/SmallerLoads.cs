using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Make fewer pieces of one bread, so that a load takes one place less in the oven.</summary>
/// <param name="Bread">Which bread, counted from 0; its load takes two places or more.</param>
public sealed record SmallerLoads(int Bread) : PlanChange
{
    /// <inheritdoc/>
    public override BenchClass Apply(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return bench.With(Bread, bread =>
        {
            var fewer = Places(bread) - 1;
            return bread with
            {
                Steps =
                [
                    .. bread.Steps.Select(step =>
                        step.Oven is { } oven ? step with { Oven = oven with { Places = Math.Min(oven.Places, fewer) } } : step
                    ),
                ],
            };
        });
    }

    internal override int Size => 4;

    /// <summary>How many places in the oven a load of a bread takes at once, 0 for one that is not baked.</summary>
    public static int Places(BenchBread bread)
    {
        ArgumentNullException.ThrowIfNull(bread);
        return bread.Steps.Max(step => step.Oven?.Places ?? 0);
    }
}
