namespace ClassKit.Baking;

/// <summary>A hollow in a bread that steam has blown up.</summary>
public static class SteamPocket
{
    /// <summary>The water that must turn to steam to fill a hollow, at the boiling point under <paramref name="pressure"/>.</summary>
    /// <param name="hollow">Not negative.</param>
    /// <param name="pressure">Outside; the little that the walls add is left out.</param>
    /// <remarks>mass = V / v_g: 1 L of steam at sea level is 0.598 g of water (v_g = 1.6733 L/g).</remarks>
    public static Mass WaterToFill(Volume hollow, Pressure pressure) =>
        Mass.FromGrams(hollow.Litres / Saturation.VapourLitresPerGram(Saturation.BoilingPoint(pressure)));

    /// <summary>The room that water takes once all of it is steam at the boiling point.</summary>
    public static Volume SteamFrom(Mass water, Pressure pressure) =>
        Volume.FromLitres(water.Grams * Saturation.VapourLitresPerGram(Saturation.BoilingPoint(pressure)));
}
