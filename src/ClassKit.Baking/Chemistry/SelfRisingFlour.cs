namespace ClassKit.Baking;

/// <summary>What the law asks of flour with leavening in it.</summary>
/// <remarks>21 CFR 137.180.</remarks>
public static class SelfRisingFlour
{
    /// <summary>At least half a gram of carbon dioxide from 100 g.</summary>
    public const double MinimumCarbonDioxideShare = 0.005;

    /// <summary>At most 4.5 parts of acid and soda together for 100 parts of flour.</summary>
    public const double MaximumLeaveningPerFlour = 0.045;

    /// <summary>The least soda in 100 g, if acid neutralises all of it: 0.954 g.</summary>
    public static Mass MinimumSodaPer100Grams => BakingSoda.For(Mass.FromGrams(100 * MinimumCarbonDioxideShare));
}
