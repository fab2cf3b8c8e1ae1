using ClassKit.Exercises.Randomness;
using ClassKit.Pages.Charts;

namespace ClassKit.Pages.Drawings;

/// <summary>
/// A cut through dough or a muffin: its outline and the bubbles in it, drawn by chance under what its state says of them.
/// </summary>
/// <param name="Outline">The path of its edge.</param>
/// <param name="Bubbles">The bubbles.</param>
internal sealed record SeenCut(string Outline, IReadOnlyList<Bubble> Bubbles)
{
    /// <summary>The drawing's width and height, in millimetres.</summary>
    public const double Width = 100;

    /// <inheritdoc cref="Width"/>
    public const double Height = 78;

    /// <summary>Where the floor of tub or tin is.</summary>
    public const double Floor = 72;

    /// <summary>
    /// A cut in one of the states of <see cref="ClassKit.Exercises.Authoring.DrawnThings"/>; the shapes are drawn from common practice, no
    /// source.
    /// </summary>
    /// <param name="state">The state's name.</param>
    /// <param name="random">Where the bubbles fall.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is drawn for that state.</exception>
    public static SeenCut Of(string state, SeededDraws random) =>
        state switch
        {
            "under_proofed" => Dough(random, x => 44 - 1.5 * Dome(x), new(46, 0.7, 1.5, 3)),
            "just_proofed" => Dough(random, x => 22 - 9 * Dome(x), new(210, 0.9, 3.4, 0.9)),
            "over_proofed" => Dough(random, x => 20 + 12 * Dome(x), new(60, 3, 7.5, -1.2)),
            "well_mixed" => Muffin(random, x => 26 - 9 * Dome(x), new(170, 0.8, 1.7, 0.9)),
            "overmixed" => Muffin(random, x => 27 - 17 * (1 - Math.Abs(x)), new(30, 0.5, 0.9, 1.5)) is var cut
                ? cut with
                {
                    Bubbles = [.. Tunnels(random), .. cut.Bubbles.Where(bubble => bubble.Y > 40 || Math.Abs(bubble.X - 50) > 22)],
                }
                : cut,
            "stood_long" => Muffin(random, x => 30, new(70, 0.4, 0.8, 1.6)),
            _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Nothing is drawn for that state."),
        };

    /// <summary>1 in the middle, 0 at the edges.</summary>
    private static double Dome(double x) => 1 - x * x;

    private static SeenCut Dough(SeededDraws random, Func<double, double> top, Bubbling bubbling) =>
        new(Path(top, 42, 42), bubbling.Fill(random, top, _ => 42));

    private static SeenCut Muffin(SeededDraws random, Func<double, double> top, Bubbling bubbling) =>
        new(Path(top, 36, 27), bubbling.Fill(random, top, y => 27 + (9 * (Floor - y) / (Floor - 30))));

    /// <summary>Long holes from the foot towards the peak.</summary>
    private static IEnumerable<Bubble> Tunnels(SeededDraws random) =>
        new[] { -17.0, -7, 4, 15 }.Select(place =>
        {
            var tall = 13 + (3 * random.Fraction());
            return new Bubble(
                50 + place * 0.8,
                Floor - 8 - tall - (4 * random.Fraction()),
                1.6 + (0.7 * random.Fraction()),
                tall,
                -place * 0.9
            );
        });

    /// <summary>The edge: along the top from left to right, down, and back along the floor.</summary>
    private static string Path(Func<double, double> top, double half, double halfAtFloor)
    {
        var points = Enumerable.Range(-20, 41).Select(step => (X: 50 + (half * step / 20), Y: top(step / 20.0)));
        return $"M{string.Join('L', points.Select(point => $"{SvgNumber.Of(point.X)} {SvgNumber.Of(point.Y)}"))}L{SvgNumber.Of(50 + halfAtFloor)} {SvgNumber.Of(Floor)}L{SvgNumber.Of(50 - halfAtFloor)} {SvgNumber.Of(Floor)}Z";
    }
}
