using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Leave one bread to the instructor, who makes one load of it for all to see and taste.</summary>
/// <param name="Bread">Which bread, counted from 0.</param>
public sealed record LeaveToInstructor(int Bread) : PlanChange
{
    /// <inheritdoc/>
    public override BenchClass Apply(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return bench.With(Bread, bread => bread with { LeftToInstructor = true });
    }

    internal override int Size => 12;
}
