namespace ClassKit.BenchPlans.Plans;

/// <summary>What a minute of each drawback of a plan counts. A plan is the better, the lower its sum.</summary>
/// <param name="Standing">A finished bread stands until the tasting.</param>
/// <param name="Waiting">A dough waits between two steps, or the first team waits between a demonstration and what it showed.</param>
/// <param name="Hurry">A hands-on step is planned shorter than its longest.</param>
/// <param name="Unlike">Members of a series differ in what the series does not change.</param>
public sealed record PlanWeights(int Standing, int Waiting, int Hurry, int Unlike)
{
    /// <summary>
    /// What is compared is alike before all else, then freshness, then doughs that do not wait, then time for hands that learn. Our choice:
    /// no source weighs them.
    /// </summary>
    /// <remarks>A minute's difference within a series counts as much as a minute in which a dozen loads stand.</remarks>
    public static PlanWeights Default { get; } = new(20, 4, 1, 250);
}
