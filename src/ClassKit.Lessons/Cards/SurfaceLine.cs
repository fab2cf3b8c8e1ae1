using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>What a team takes for greasing, dusting or glazing one bread.</summary>
/// <param name="Surface">What, and what for.</param>
/// <param name="Mass">How much.</param>
public sealed record SurfaceLine(SurfaceIngredient Surface, Mass Mass);
