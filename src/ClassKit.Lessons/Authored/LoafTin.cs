namespace ClassKit.Lessons.Authored;

/// <summary>A loaf tin with upright walls, and the shape of what rises in it: the tin's up to the rim, above it a vault.</summary>
/// <param name="LengthMillimetres">Inside; above 0.</param>
/// <param name="WidthMillimetres">Inside, across; above 0.</param>
/// <param name="DepthMillimetres">From the bottom to the rim; above 0.</param>
/// <remarks>
/// On the rim a segment of a cylinder along the tin: area r² acos((r - h)/r) - (r - h) √(2 r h - h²) (Weisstein, MathWorld, "Circular
/// Segment"). It is never wider than the tin.
/// </remarks>
public sealed record LoafTin(double LengthMillimetres, double WidthMillimetres, double DepthMillimetres) : BakingShape
{
    /// <inheritdoc/>
    public override string Words => "in the tin with a vault on it";

    /// <summary>What it holds to the rim, in millilitres.</summary>
    public double Millilitres => LengthMillimetres * WidthMillimetres * DepthMillimetres / 1000;

    /// <inheritdoc/>
    public override double HeightOf(double millilitres) =>
        millilitres <= Millilitres
            ? millilitres * 1000 / (LengthMillimetres * WidthMillimetres)
            : DepthMillimetres + Solve(Vault, millilitres - Millilitres, millilitres * 1000 / (LengthMillimetres * WidthMillimetres) * 2);

    /// <inheritdoc/>
    public override double DiameterOf(double millilitres) => WidthMillimetres;

    /// <summary>Up to half a circle a segment, above it half a circle lifted on upright walls.</summary>
    private double Vault(double height)
    {
        var half = WidthMillimetres / 2;
        if (height <= 0)
            return 0;
        if (height >= half)
            return LengthMillimetres * (Math.PI * half * half / 2 + WidthMillimetres * (height - half)) / 1000;
        var radius = (half * half + height * height) / (2 * height);
        return LengthMillimetres
            * (
                radius * radius * Math.Acos((radius - height) / radius)
                - (radius - height) * Math.Sqrt(2 * radius * height - height * height)
            )
            / 1000;
    }
}
