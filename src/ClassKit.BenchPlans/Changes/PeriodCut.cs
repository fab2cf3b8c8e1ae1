using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Conflicts;

namespace ClassKit.BenchPlans.Changes;

/// <summary>What was moved out of a period or cut, where not all of a lesson fits it.</summary>
/// <param name="Change">What.</param>
/// <param name="Bench">The class as it was.</param>
public sealed record PeriodCut(PlanChange Change, BenchClass Bench)
{
    /// <summary>What could not be had together; null where that is not known.</summary>
    public PlanConflict? Conflict { get; init; }

    /// <summary>How many minutes more would have been enough instead; null where no number was found to be.</summary>
    public int? MissingMinutes { get; init; }
}
