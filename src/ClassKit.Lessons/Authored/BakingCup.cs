namespace ClassKit.Lessons.Authored;

/// <summary>A round cup or tin, straight or tapered, and the shape of what rises in it: the cup's up to the rim, above it a dome.</summary>
/// <param name="TopMillimetres">Its width at the rim; above 0.</param>
/// <param name="BottomMillimetres">Its width at the bottom; above 0.</param>
/// <param name="DepthMillimetres">From the bottom to the rim; above 0.</param>
/// <remarks>
/// A truncated cone, V = π h (R² + R r + r²) / 3, and on the rim a spherical cap, V = π h (3 a² + h²) / 6 (Weisstein, MathWorld, "Conical
/// Frustum" and "Spherical Cap"). A cap higher than half of its width is wider than the rim: what balloons over the edge. Real tops are
/// rougher than that.
/// </remarks>
public sealed record BakingCup(double TopMillimetres, double BottomMillimetres, double DepthMillimetres) : BakingShape
{
    /// <inheritdoc/>
    public override string Words => "in the cup with a dome on it";

    /// <summary>What it holds to the rim, in millilitres.</summary>
    public double Millilitres => FilledTo(DepthMillimetres);

    /// <inheritdoc/>
    public override double HeightOf(double millilitres) =>
        millilitres <= Millilitres ? Solve(FilledTo, millilitres, DepthMillimetres) : DepthMillimetres + DomeOf(millilitres);

    /// <inheritdoc/>
    public override double DiameterOf(double millilitres)
    {
        if (millilitres <= Millilitres)
            return Math.Max(BottomMillimetres, WidthAt(HeightOf(millilitres)));
        var (dome, rim) = (DomeOf(millilitres), TopMillimetres / 2);
        return dome <= rim ? TopMillimetres : (rim * rim + dome * dome) / dome;
    }

    private double DomeOf(double millilitres) =>
        Solve(Cap, millilitres - Millilitres, 10 * (TopMillimetres + Math.Cbrt(millilitres * 1000)));

    private double WidthAt(double height) => BottomMillimetres + (TopMillimetres - BottomMillimetres) * height / DepthMillimetres;

    private double FilledTo(double height)
    {
        var (bottom, top) = (BottomMillimetres / 2, WidthAt(height) / 2);
        return Math.PI * height * (top * top + top * bottom + bottom * bottom) / 3 / 1000;
    }

    private double Cap(double height) => Math.PI * height * (3 * TopMillimetres * TopMillimetres / 4 + height * height) / 6 / 1000;
}
