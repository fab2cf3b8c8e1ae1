using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Plans;

/// <summary>A demonstration with its time. Minutes count from the beginning of the class.</summary>
/// <param name="Demonstration">What is shown.</param>
/// <param name="Start">The minute it begins.</param>
public sealed record PlannedDemonstration(Demonstration Demonstration, int Start)
{
    /// <summary>The minute it ends.</summary>
    public int End => Start + Demonstration.Minutes;
}
