namespace ClassKit.Baking;

/// <summary>The number by which a recipe is multiplied.</summary>
public static class PortionFactor
{
    /// <summary>By total yields: new portions × new size / (old portions × old size). 5 × 8 oz to 10 × 4 oz is 1, not 2.</summary>
    /// <param name="portions">Of the recipe; above 0.</param>
    /// <param name="size">Of one of them; above 0.</param>
    /// <param name="wantedPortions">Above 0.</param>
    /// <param name="wantedSize">Above 0.</param>
    public static Computed<double> Of(double portions, Mass size, double wantedPortions, Mass wantedSize)
    {
        if (!(portions > 0) || size.Grams <= 0)
            return new Impossibility("no-yield", $"A recipe of {Figures.Show(portions)} portions of {Figures.Grams(size)} was given.", "Give how much the recipe makes, above 0.");
        return wantedPortions > 0 && wantedSize.Grams > 0
            ? wantedPortions * wantedSize.Grams / (portions * size.Grams)
            : new Impossibility("nothing-wanted", $"{Figures.Show(wantedPortions)} portions of {Figures.Grams(wantedSize)} were asked for.", "Ask for more than 0.");
    }
}
