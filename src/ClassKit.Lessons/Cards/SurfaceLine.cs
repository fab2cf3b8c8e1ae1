using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Cards;

/// <summary>What a team takes for greasing, dusting or glazing one bread.</summary>
/// <param name="Surface">What, and what for.</param>
/// <param name="Mass">How much.</param>
public sealed record SurfaceLine(SurfaceIngredient Surface, Mass Mass)
{
    /// <summary>True of the fat of a fryer, which is filled once for all that is fried in it and not for each bread of each team.</summary>
    public bool IsFryers { get; init; }
}
