using ClassKit.Baking.Cooking;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Altitude;

/// <summary>A heat that a bread is given.</summary>
/// <param name="Way">What it is cooked in or over.</param>
/// <param name="At">How hot, as written for sea level; null where that is as hot as it is.</param>
public sealed record GivenHeat(CookingWay Way, Temperature? At)
{
    /// <summary>An oven as hot as it may be: what a formula is taken to bake in where nothing else is said.</summary>
    public static IReadOnlyList<GivenHeat> AnOven { get; } = [new(CookingWay.Oven, null)];
}
