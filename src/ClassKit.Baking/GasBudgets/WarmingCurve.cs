using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.GasBudgets;

/// <summary>How a piece warms in the oven: Newton's law on one lump, up to the boiling point.</summary>
/// <remarks>
/// A piece has no single temperature: its rim is far ahead of its middle. One time constant, fitted to the end of baking, gives the order
/// of events and no more than that.
/// </remarks>
internal sealed class WarmingCurve
{
    private readonly double _constantMinutes;
    private readonly Temperature _boiling;

    private WarmingCurve(double constantMinutes, Temperature boiling)
    {
        _constantMinutes = constantMinutes;
        _boiling = boiling;
    }

    /// <summary>
    /// The curve of a piece that starts at <paramref name="start"/> and is at <paramref name="reached"/> after some minutes in an oven.
    /// </summary>
    public static WarmingCurve Through(Temperature start, Temperature reached, double minutes, Temperature oven, Temperature boiling) =>
        new(minutes / Math.Log((oven.Celsius - start.Celsius) / (oven.Celsius - reached.Celsius)), boiling);

    /// <summary>
    /// The same through several heats one after the other, as in an oven that is turned down: hot for the first quarter of an hour, and no
    /// longer.
    /// </summary>
    /// <param name="start">As warm as it goes in.</param>
    /// <param name="reached">As warm as it is at the end; below each of the heats.</param>
    /// <param name="heats">Minutes and oven, in order; at least one, of more than no minutes together.</param>
    /// <param name="boiling">Where it gets no hotter.</param>
    public static WarmingCurve Through(
        Temperature start,
        Temperature reached,
        IReadOnlyList<(double Minutes, Temperature Oven)> heats,
        Temperature boiling
    )
    {
        if (heats.Count == 1 || heats.Any(heat => heat.Oven.Celsius <= reached.Celsius))
            return Through(start, reached, heats.Sum(heat => heat.Minutes), heats[0].Oven, boiling);
        // The longer the constant, the cooler the end.
        var (low, high) = (Shortest, Longest);
        for (var halving = 0; halving < Halvings; halving++)
        {
            var constant = (low + high) / 2;
            var end = heats.Aggregate(start.Celsius, (now, heat) =>
                heat.Oven.Celsius - (heat.Oven.Celsius - now) * Math.Exp(-heat.Minutes / constant)
            );
            (low, high) = end > reached.Celsius ? (constant, high) : (low, constant);
        }
        return new((low + high) / 2, boiling);
    }

    private const double Shortest = 1e-3;
    private const double Longest = 1e6;
    private const int Halvings = 80;

    /// <summary>The piece some minutes later.</summary>
    public Temperature After(Temperature now, double minutes, Temperature oven)
    {
        var celsius = oven.Celsius - (oven.Celsius - now.Celsius) * Math.Exp(-minutes / _constantMinutes);
        return Temperature.FromCelsius(Math.Min(celsius, _boiling.Celsius));
    }

    /// <summary>
    /// Grams of water that boil off a piece in a minute once it is at the boiling point: the heat that warmed it before now evaporates.
    /// </summary>
    public double GramsBoiledPerMinute(Mass piece, double moisture, Temperature oven) =>
        piece.Grams
        * HeatCapacity(moisture)
        * (oven.Celsius - _boiling.Celsius)
        / _constantMinutes
        / Saturation.HeatToEvaporateGram(_boiling).Joules;

    /// <summary>J/(g K) of a dough: 4.180 for its water and 1.42 for the rest, taken as carbohydrate (Heldman 1975).</summary>
    private static double HeatCapacity(double moisture) => 4.180 * moisture + 1.42 * (1 - moisture);
}
