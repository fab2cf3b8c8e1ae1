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
