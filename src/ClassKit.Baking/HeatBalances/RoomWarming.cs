using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.HeatBalances;

/// <summary>How a dough or batter that stands comes to the temperature of the room: Newton's law of cooling on one lump.</summary>
/// <param name="Start">As it begins to stand.</param>
/// <param name="Room">Around it.</param>
/// <param name="ConstantMinutes">After so long 63 % of the way is behind it; above 0.</param>
/// <remarks>
/// A lump has no single temperature: its rim is ahead of its middle, and a probe in the middle reads a little less of the way. Evaporation
/// is left out, since it stands covered.
/// </remarks>
public sealed record RoomWarming(Temperature Start, Temperature Room, double ConstantMinutes)
{
    /// <summary>
    /// Heat that a covered bowl takes up from still air, in W/(m² K): some 5 by radiation and 4 to 5 by the air. Low and high: from memory,
    /// on wood and on steel.
    /// </summary>
    /// <remarks>
    /// Radiation 4 ε σ T³ with ε = 0.95 (Stefan and Boltzmann); air 1.42 (ΔT / L)^¼ along an upright wall, J. P. Holman, Heat Transfer,
    /// table 7-2, from memory. Together 9 to 10.
    /// </remarks>
    public static Band<double> SurfaceCoefficient { get; } = new(6, 10, 16);

    /// <summary>
    /// Surface of half a ball with its lid, as a bowl holds a dough, over its volume to the power of two thirds: 3 π (3 / 2 π)^⅔.
    /// </summary>
    private const double BowlSurface = 5.757;

    /// <summary>A mass of dough, by the middle of <see cref="SurfaceCoefficient"/>.</summary>
    /// <param name="formula">With something in it.</param>
    /// <param name="dough">In one lump; above 0.</param>
    /// <param name="start">As it begins to stand.</param>
    /// <param name="room">Around it.</param>
    public static RoomWarming Of(BakersFormula formula, Mass dough, Temperature start, Temperature room)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var joulesPerKelvin =
            dough.Grams * formula.Lines.Sum(line => line.Percent * SpecificHeat.Of(line.Ingredient)) / formula.TotalPercent;
        var squareMetres = BowlSurface * Math.Pow(DoughVolume.GasFree(formula, dough).Millilitres * 1e-6, 2 / 3.0);
        return new(start, room, joulesPerKelvin / (SurfaceCoefficient.Typical * squareMetres) / 60);
    }

    /// <summary>As warm as it is after a while.</summary>
    /// <param name="minutes">Not negative.</param>
    public Temperature After(double minutes) =>
        Temperature.FromCelsius(Room.Celsius - (Room.Celsius - Start.Celsius) * Math.Exp(-minutes / ConstantMinutes));

    /// <summary>The same between the ends of <see cref="SurfaceCoefficient"/>, of a lump known by its middle.</summary>
    /// <param name="minutes">Not negative.</param>
    public Band<Temperature> Between(double minutes)
    {
        var ends = new[] { With(SurfaceCoefficient.Low).After(minutes), With(SurfaceCoefficient.High).After(minutes) };
        return new(ends.MinBy(end => end.Celsius), After(minutes), ends.MaxBy(end => end.Celsius));

        RoomWarming With(double coefficient) => this with { ConstantMinutes = ConstantMinutes * SurfaceCoefficient.Typical / coefficient };
    }

    /// <summary>As warm as it is on the mean of that time: for what goes on meanwhile.</summary>
    /// <param name="minutes">Not negative.</param>
    public Temperature Mean(double minutes) =>
        minutes > 0
            ? Temperature.FromCelsius(
                Room.Celsius - (Room.Celsius - Start.Celsius) * (1 - Math.Exp(-minutes / ConstantMinutes)) * ConstantMinutes / minutes
            )
            : Start;
}
