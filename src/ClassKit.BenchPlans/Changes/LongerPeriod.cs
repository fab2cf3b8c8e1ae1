using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Give the class more time.</summary>
/// <param name="Minutes">How many minutes more; above 0.</param>
public sealed record LongerPeriod(int Minutes) : PlanChange
{
    /// <inheritdoc/>
    public override BenchClass Apply(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return bench with { Time = bench.Time with { PeriodMinutes = bench.Time.PeriodMinutes + Minutes } };
    }

    /// <summary>A few minutes are found sooner than a griddle, half an hour is not.</summary>
    internal override int Size => 1 + (Minutes / 5);
}
