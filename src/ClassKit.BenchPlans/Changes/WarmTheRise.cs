using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;
using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Let the yeast of one bread work warmer and so shorter.</summary>
/// <param name="Bread">Which bread, counted from 0.</param>
/// <param name="Temperature">Of every rise that was cooler.</param>
/// <param name="Yeast">How much shorter that makes a rise.</param>
public sealed record WarmTheRise(int Bread, Temperature Temperature, YeastGasModel Yeast) : PlanChange
{
    /// <inheritdoc/>
    public override BenchClass Apply(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return bench.With(Bread, bread => bread with { Steps = [.. bread.Steps.Select(Warmed)] });
    }

    internal override int Size => 2;

    private BenchStep Warmed(BenchStep step)
    {
        if (step.RiseAt is not { } cooler || cooler.Celsius >= Temperature.Celsius)
            return step;
        return step with { MinMinutes = Minutes(step.MinMinutes), MaxMinutes = Minutes(step.MaxMinutes), RiseAt = Temperature };

        // Rounded up: a rise planned a minute too long does no harm, one too short does.
        int Minutes(int known) =>
            known == 0 || !EquivalentSchedule.Minutes(known, cooler, Temperature, 1, Yeast).TryGet(out var minutes, out _)
                ? known
                : (int)Math.Ceiling(minutes.Typical - 1e-9);
    }
}
