using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;

namespace ClassKit.Grading.Judging.Slips;

/// <summary>A way to round: to which step, and in which direction.</summary>
/// <param name="Step">Above 0, in the cell's own scale: 0.01 is a whole percent.</param>
/// <param name="Direction">Where what lies between two steps goes.</param>
internal readonly record struct Rounding(decimal Step, RoundingDirection Direction)
{
    /// <summary>Doubles that stand for a whole number of steps miss it by less.</summary>
    private const double Slack = 1e-9;

    private static readonly decimal[] Leading = [1, 2, 2.5m, 5];

    /// <summary>
    /// Everything that ROUND, MROUND, FLOOR and their like do to the numbers of a kitchen: to decimals and tens first, which are the
    /// likeliest, and the finest of them first.
    /// </summary>
    public static IReadOnlyList<Rounding> All { get; } =
    [
        .. Leading
            .SelectMany(leading => Enumerable.Range(-7, 12).Select(power => leading * (decimal)Math.Pow(10, power)))
            .SelectMany(step => Enum.GetValues<RoundingDirection>().Select(direction => new Rounding(step, direction))),
    ];

    /// <summary>The step as numbers of cells are.</summary>
    private double Size { get; } = (double)Step;

    /// <summary>The same in the scale of a part's cell: to whole percent where it asks for percent.</summary>
    public Rounding For(Part part) => new(part.Unit.Held(Step), Direction);

    /// <summary>False where one number is further from another than rounding takes any: most roundings need no working out.</summary>
    public bool MayGoTo(double number, double rounded) =>
        Math.Abs(number - rounded) <= 2 * (Size + (2 * Slack * Math.Max(Math.Abs(number), 1)));

    /// <summary>The multiple of the step that a number goes to.</summary>
    public double Of(double number)
    {
        var steps = number / Size;
        var slack = Slack * Math.Max(1, Math.Abs(steps));
        var whole = Direction switch
        {
            RoundingDirection.Nearest => Math.Round(steps + (Math.Sign(steps) * slack), MidpointRounding.AwayFromZero),
            RoundingDirection.Up => Math.Ceiling(steps - slack),
            RoundingDirection.Down => Math.Floor(steps + slack),
            RoundingDirection.TowardsZero => Math.Truncate(steps + (Math.Sign(steps) * slack)),
        };
        return whole * Size;
    }
}
