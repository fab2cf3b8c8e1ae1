namespace ClassKit.BenchPlans.Plans;

/// <summary>What a minute of each drawback of a plan counts. A plan is the better, the lower its sum.</summary>
/// <param name="Standing">A finished bread stands until the tasting.</param>
/// <param name="Waiting">A dough waits between two steps, or the first team waits between a demonstration and what it showed.</param>
/// <param name="Hurry">A hands-on step is planned shorter than its longest.</param>
public sealed record PlanWeights(int Standing, int Waiting, int Hurry)
{
    /// <summary>Freshness first, then doughs that do not wait, then time for hands that learn. Our choice: no source weighs them.</summary>
    public static PlanWeights Default { get; } = new(20, 4, 1);
}
