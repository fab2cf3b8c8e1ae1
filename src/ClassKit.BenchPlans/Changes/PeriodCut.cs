using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>What was moved out of a period or cut, where not all of a lesson fits it.</summary>
/// <param name="Change">What.</param>
/// <param name="Bench">The class as it was.</param>
public sealed record PeriodCut(PlanChange Change, BenchClass Bench);
