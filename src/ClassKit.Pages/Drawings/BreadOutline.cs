using ClassKit.Lessons.Authored;

namespace ClassKit.Pages.Drawings;

/// <summary>A bread cut through its middle: the right half of its edge, from the middle of the bottom to the top.</summary>
/// <param name="Edge">Millimetres from the middle, and above the bottom.</param>
/// <param name="Rim">Where the tin ends, from the middle and above the bottom; null where there is none or the bread does not reach
/// it.</param>
public sealed record BreadOutline(IReadOnlyList<(double X, double Z)> Edge, (double X, double Z)? Rim)
{
    /// <summary>An arc in as many straight lines: at print size nobody sees them.</summary>
    private const int Chords = 48;

    /// <summary>How high it stands, in millimetres.</summary>
    public double Height => Edge.Max(point => point.Z);

    /// <summary>How far its edge lies from its middle at most, in millimetres.</summary>
    public double HalfWidth => Edge.Max(point => point.X);

    /// <summary>The edge of a bread of a volume, by the same bodies that its height is computed with.</summary>
    /// <param name="shape">What it bakes in or on.</param>
    /// <param name="millilitres">Above 0.</param>
    public static BreadOutline Of(BakingShape shape, double millilitres)
    {
        ArgumentNullException.ThrowIfNull(shape);
        var height = shape.HeightOf(millilitres);
        return shape switch
        {
            BakingCup cup => InCup(cup, height),
            LoafTin tin => InTin(tin, height),
            FreeStanding => new([(0, 0), .. Cap(shape.DiameterOf(millilitres) / 2, height, 0)], null),
            _ => throw new ArgumentException($"{shape.GetType().Name} has no outline", nameof(shape)),
        };
    }

    /// <summary>The same edge around the middle of the height, smaller in every direction.</summary>
    /// <param name="volumeShare">Of the whole volume, 0 to 1: what is hollow.</param>
    public BreadOutline Inside(double volumeShare)
    {
        var scale = Math.Cbrt(volumeShare);
        var middle = Height / 2;
        return new([.. Edge.Select(point => (point.X * scale, middle + (point.Z - middle) * scale))], null);
    }

    private static BreadOutline InCup(BakingCup cup, double height)
    {
        var (bottom, rim) = (cup.BottomMillimetres / 2, cup.TopMillimetres / 2);
        if (height <= cup.DepthMillimetres)
        {
            var width = bottom + (rim - bottom) * height / cup.DepthMillimetres;
            return new([(0, 0), (bottom, 0), (width, height), (0, height)], (rim, cup.DepthMillimetres));
        }
        return new([(0, 0), (bottom, 0), .. Cap(rim, height - cup.DepthMillimetres, cup.DepthMillimetres)], (rim, cup.DepthMillimetres));
    }

    private static BreadOutline InTin(LoafTin tin, double height)
    {
        var half = tin.WidthMillimetres / 2;
        var above = height - tin.DepthMillimetres;
        IEnumerable<(double, double)> top =
            above <= 0 ? [(half, height), (0, height)]
            : above < half ? Cap(half, above, tin.DepthMillimetres)
            : Cap(half, half, height - half);
        return new([(0, 0), (half, 0), .. top], (half, tin.DepthMillimetres));
    }

    /// <summary>An arc from the rim to the top; where it is higher than half of its width it balloons over the rim.</summary>
    private static IEnumerable<(double X, double Z)> Cap(double rim, double height, double base0)
    {
        var radius = (rim * rim + height * height) / (2 * height);
        var centre = base0 + height - radius;
        var from = Math.Atan2(base0 - centre, rim);
        for (var step = 0; step <= Chords; step++)
        {
            var angle = from + (Math.PI / 2 - from) * step / Chords;
            yield return (radius * Math.Cos(angle), centre + radius * Math.Sin(angle));
        }
    }
}
