namespace ClassKit.Lessons.Authored;

/// <summary>A round bread that stands on a tray by itself: a cap of a sphere, as high as a share of its width.</summary>
/// <param name="HeightToWidth">The middle of what such breads come to; above 0, at most 1.</param>
/// <param name="Known">What they come to, and from where, in words.</param>
/// <param name="Error">By how much the height of one volume is another at the ends of that, either way, and what is misread; a share.</param>
/// <remarks>V = π h (3 a² + h²) / 6 with a half of the width (Weisstein, MathWorld, "Spherical Cap").</remarks>
public sealed record FreeStanding(double HeightToWidth, string Known, double Error) : BakingShape
{
    /// <summary>
    /// Steamed breads are 1.2 to 1.6 times as wide as they are high (S. Huang and D. Miskelly, Steamed Breads, table 2.1): steam sets them
    /// before they spread. At those ends the height is 6 % another and the width 9 %; the rest is what is misread.
    /// </summary>
    public static FreeStanding Steamed { get; } =
        new(0.71, "1.2 to 1.6 times as wide as high: S. Huang and D. Miskelly, Steamed Breads, table 2.1", 0.15);

    /// <summary>
    /// Round breads without a tin: no measurement of rolls was found. From memory: 0.35 to 0.6 of the width, since a slack dough spreads and a tight
    /// one climbs. At those ends the height is 10 % less and 19 % more, the width 8 % more and 16 % less.
    /// </summary>
    public static FreeStanding Round { get; } = new(0.42, "0.35 to 0.6 times as high as wide: from memory", 0.2);

    /// <inheritdoc/>
    public override double ShapeError => Error;

    /// <inheritdoc/>
    public override string Words => $"standing free, as a round cap ({Known})";

    /// <inheritdoc/>
    public override double HeightOf(double millilitres)
    {
        var half = 1 / (2 * HeightToWidth);
        return Math.Cbrt(6 * millilitres * 1000 / (Math.PI * (3 * half * half + 1)));
    }

    /// <inheritdoc/>
    public override double DiameterOf(double millilitres) => HeightOf(millilitres) / HeightToWidth;
}
