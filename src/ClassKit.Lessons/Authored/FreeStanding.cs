namespace ClassKit.Lessons.Authored;

/// <summary>A round bread that stands on a tray by itself: a cap of a sphere, as high as a share of its width.</summary>
/// <param name="HeightToWidth">0.35 to 0.5 of round breads without a tin, from memory: a slack dough spreads.</param>
/// <remarks>V = π h (3 a² + h²) / 6 with a half of the width (Weisstein, MathWorld, "Spherical Cap").</remarks>
public sealed record FreeStanding(double HeightToWidth) : BakingShape
{
    /// <summary>
    /// Steamed breads are 1.2 to 1.6 times as wide as they are high (S. Huang and D. Miskelly, Steamed Breads, table 2.1): steam sets them
    /// before they spread.
    /// </summary>
    public static FreeStanding Steamed { get; } = new(0.71);

    /// <summary>The middle of what round breads come to.</summary>
    public static FreeStanding Round { get; } = new(0.42);

    /// <summary>From 0.35 to 0.5 of the width the height changes by an eighth either way for the same volume.</summary>
    public override double ShapeError => 0.15;

    /// <inheritdoc/>
    public override string Words => "standing free, as a round cap";

    /// <inheritdoc/>
    public override double HeightOf(double millilitres)
    {
        var half = 1 / (2 * HeightToWidth);
        return Math.Cbrt(6 * millilitres * 1000 / (Math.PI * (3 * half * half + 1)));
    }

    /// <inheritdoc/>
    public override double DiameterOf(double millilitres) => HeightOf(millilitres) / HeightToWidth;
}
