using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Costing;

/// <summary>The number by which a recipe is multiplied.</summary>
public static class PortionFactor
{
    private const double MostPortions = 1e7;

    /// <summary>From a pinch to a factory; beyond that it is a slip of the unit.</summary>
    private const double MostFactor = 1e9;

    /// <summary>By total yields: new portions × new size / (old portions × old size). 5 × 8 oz to 10 × 4 oz is 1, not 2.</summary>
    /// <param name="portions">Of the recipe; above 0.</param>
    /// <param name="size">Of one of them; above 0.</param>
    /// <param name="wantedPortions">Above 0.</param>
    /// <param name="wantedSize">Above 0.</param>
    /// <remarks>Kendall College, "Recipe conversions"; Armed Forces Recipe Service, General Information A-1.</remarks>
    public static Computed<double> Of(double portions, Mass size, double wantedPortions, Mass wantedSize)
    {
        if (!(portions > 0) || portions > MostPortions || Sanity.Mass(size, "one portion", "no-yield") is not null)
            return new Impossibility(
                "no-yield",
                $"A recipe of {Figures.Exact(portions)} portions of {Figures.Grams(size)} was given.",
                "Give how much the recipe makes, above 0, and look at the units."
            );
        if (!(wantedPortions > 0) || wantedPortions > MostPortions || Sanity.Mass(wantedSize, "one portion", "nothing-wanted") is not null)
            return new Impossibility(
                "nothing-wanted",
                $"{Figures.Exact(wantedPortions)} portions of {Figures.Grams(wantedSize)} were asked for.",
                "Ask for more than 0, and look at the units."
            );
        var factor = wantedPortions * wantedSize.Grams / (portions * size.Grams);
        return factor is >= 1 / MostFactor and <= MostFactor
            ? Explanation
                .Of(
                    "Factor",
                    "factor",
                    "wanted portions × wanted size / (portions × size)",
                    $"{Figures.Exact(wantedPortions)} × {Figures.Grams(wantedSize)} / ({Figures.Exact(portions)} × {Figures.Grams(size)})",
                    Figures.Show(factor)
                )
                .For(factor)
            : new Impossibility(
                "no-yield",
                $"A recipe of {Figures.Exact(portions)} portions of {Figures.Grams(size)} was given.",
                "Give how much the recipe makes, and look at the units."
            );
    }
}
