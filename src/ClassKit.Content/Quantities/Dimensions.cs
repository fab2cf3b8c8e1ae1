using ClassKit.Baking.Altitude;
using ClassKit.Baking.Quantities;

namespace ClassKit.Content.Quantities;

/// <summary>The quantities that authored files hold.</summary>
internal static class Dimensions
{
    /// <summary>Millimetres in an inch, exact (NIST SP 811, appendix B).</summary>
    private const double MillimetresPerInch = 25.4;

    public static readonly Dimension<Mass> Mass = new(
        "60 g",
        new Dictionary<string, Func<double, Mass>>
        {
            ["g"] = Baking.Quantities.Mass.FromGrams,
            ["kg"] = Baking.Quantities.Mass.FromKilograms,
            ["oz"] = Baking.Quantities.Mass.FromOunces,
            ["lb"] = Baking.Quantities.Mass.FromPounds,
        }
    );

    public static readonly Dimension<Temperature> Temperature = new(
        "24 °C",
        new Dictionary<string, Func<double, Temperature>>
        {
            ["°C"] = Baking.Quantities.Temperature.FromCelsius,
            ["C"] = Baking.Quantities.Temperature.FromCelsius,
            ["°F"] = Baking.Quantities.Temperature.FromFahrenheit,
            ["F"] = Baking.Quantities.Temperature.FromFahrenheit,
        }
    );

    public static readonly Dimension<double> Minutes = new(
        "150 min",
        new Dictionary<string, Func<double, double>> { ["min"] = minutes => minutes, ["h"] = hours => hours * 60 }
    );

    public static readonly Dimension<double> Metres = new(
        "320 m",
        new Dictionary<string, Func<double, double>> { ["m"] = metres => metres, ["ft"] = feet => feet * AltitudeTable.MetresPerFoot }
    );

    public static readonly Dimension<double> Millimetres = new(
        "70 mm",
        new Dictionary<string, Func<double, double>>
        {
            ["mm"] = millimetres => millimetres,
            ["cm"] = centimetres => centimetres * 10,
            ["in"] = inches => inches * MillimetresPerInch,
        }
    );

    /// <summary>Percent as the number in front of the sign: <c>4 %</c> is 4.</summary>
    public static readonly Dimension<double> Percent = new(
        "4 %",
        new Dictionary<string, Func<double, double>> { ["%"] = percent => percent }
    );

    /// <summary>As long as a class can last, in minutes or hours.</summary>
    public static readonly Bounds Period = new(0, false, 1440);

    /// <summary>A part of a class, which may be missing, in minutes or hours.</summary>
    public static readonly Bounds PartOfPeriod = new(0, true, 1440);

    /// <summary>What rests after a class, in minutes or hours, and for no longer than a week.</summary>
    public static readonly Bounds LongRest = new(0, false, 7 * 1440);

    /// <summary>What a kitchen or an oven can have, in either scale; keeps slips such as 2200 °C from passing.</summary>
    public static readonly Bounds KitchenDegrees = new(-40, true, 600);
}
