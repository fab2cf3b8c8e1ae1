using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Authored;

/// <summary>How a starter is built before the class: ripe starter, flour and water, how warm and for how long.</summary>
/// <param name="Ripe">Parts of ripe starter; above 0.</param>
/// <param name="Flour">Parts of flour; above 0.</param>
/// <param name="Water">Parts of water; above 0.</param>
/// <param name="Temperature">At which it stands.</param>
/// <param name="Hours">How long, until it is ripe; above 0.</param>
public sealed record StarterBuild(double Ripe, double Flour, double Water, Temperature Temperature, double Hours)
{
    /// <summary>A little more is built than is weighed out: it clings. Common practice, no source.</summary>
    private const double More = 1.05;

    /// <summary>Water of the flour that is added, in percent: what the starter comes to when the ripe one was as wet.</summary>
    public double HydrationPercent => PerHundred.Of(Water, Flour);

    /// <summary>What is mixed for a mass of starter, to the full gram above.</summary>
    /// <param name="starter">The starter of a formula.</param>
    /// <param name="mass">As much as the dough takes.</param>
    /// <param name="water">The ingredient that wets it.</param>
    public IReadOnlyList<(Ingredient Ingredient, Mass Mass)> For(Ingredient starter, Mass mass, Ingredient water)
    {
        ArgumentNullException.ThrowIfNull(starter);
        var part = mass.Grams * More / (Ripe + Flour + Water);
        return [(starter, Whole(part * Ripe)), (starter.StarterOf!, Whole(part * Flour)), (water, Whole(part * Water))];
    }

    private static Mass Whole(double grams) => Mass.FromGrams(Math.Ceiling(grams - 1e-9));
}
