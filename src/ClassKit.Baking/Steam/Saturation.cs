using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Steam;

/// <summary>Water and its vapour side by side: at which pressure it boils, and how much room the vapour takes.</summary>
/// <remarks>
/// IAPWS R7-97(2012), "Industrial Formulation 1997": the saturation line of region 4 (equations 30 and 31) and,
/// for the vapour, region 2 (equation 15). Good from 0 °C to 350 °C here; the line itself reaches the critical point, 373.946 °C.
/// </remarks>
public static class Saturation
{
    private const double LowestKelvin = 273.15;
    private const double HighestKelvin = 647.096;
    private const double HighestVapourKelvin = 623.15;
    private const double LowestPascals = 611.213;
    private const double HighestPascals = 22.064e6;

    /// <summary>The pressure at which water boils at <paramref name="temperature"/>: 0 °C to 373.946 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the line.</exception>
    public static Pressure PressureAt(Temperature temperature)
    {
        var kelvin = temperature.Kelvin;
        if (kelvin is < LowestKelvin or > HighestKelvin)
            throw new ArgumentOutOfRangeException(
                nameof(temperature),
                temperature.Celsius,
                "Water and vapour are side by side from 0 °C to 373.946 °C only."
            );

        var theta = kelvin + N[9] / (kelvin - N[10]);
        var a = theta * theta + N[1] * theta + N[2];
        var b = N[3] * theta * theta + N[4] * theta + N[5];
        var c = N[6] * theta * theta + N[7] * theta + N[8];
        return Pressure.FromMegapascals(Math.Pow(2 * c / (-b + Math.Sqrt(b * b - 4 * a * c)), 4));
    }

    /// <summary>The temperature at which water boils under <paramref name="pressure"/>: 611.213 Pa to 22.064 MPa.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the line.</exception>
    public static Temperature BoilingPoint(Pressure pressure)
    {
        if (pressure.Pascals is < LowestPascals or > HighestPascals)
            throw new ArgumentOutOfRangeException(
                nameof(pressure),
                pressure.Pascals,
                "Water boils between 611.213 Pa and 22.064 MPa only."
            );

        var beta = Math.Pow(pressure.Megapascals, 0.25);
        var e = beta * beta + N[3] * beta + N[6];
        var f = N[1] * beta * beta + N[4] * beta + N[7];
        var g = N[2] * beta * beta + N[5] * beta + N[8];
        var d = 2 * g / (-f - Math.Sqrt(f * f - 4 * e * g));
        var sum = N[10] + d;
        return Temperature.FromKelvin((sum - Math.Sqrt(sum * sum - 4 * (N[9] + N[10] * d))) / 2);
    }

    /// <summary>
    /// Litres that a gram of saturated vapour takes at <paramref name="temperature"/>: 0 °C to 350 °C. The same number is m³/kg.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside region 2.</exception>
    public static double VapourLitresPerGram(Temperature temperature) =>
        temperature.Kelvin <= HighestVapourKelvin
            ? SteamRegion.SpecificVolume(PressureAt(temperature), temperature)
            : throw new ArgumentOutOfRangeException(
                nameof(temperature),
                temperature.Celsius,
                "The volume of saturated vapour is known here up to 350 °C."
            );

    /// <summary>The heat that turns a gram of water into steam: 2256.5 J at 100 °C.</summary>
    /// <param name="temperature">1 °C to 300 °C.</param>
    /// <remarks>
    /// Clapeyron's equation on the line above: T (v_vapour - v_liquid) dp/dT, with a liquid of 1.04 L/kg. Within 0.1 % of the steam tables
    /// up to 150 °C.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static Energy HeatToEvaporateGram(Temperature temperature)
    {
        if (temperature.Celsius is < 1 or > 300)
            throw new ArgumentOutOfRangeException(
                nameof(temperature),
                temperature.Celsius,
                "The heat of evaporation is known here from 1 °C to 300 °C."
            );
        const double halfStep = 0.05;
        const double liquidLitresPerGram = 0.00104;
        var above = PressureAt(Temperature.FromKelvin(temperature.Kelvin + halfStep)).Pascals;
        var below = PressureAt(Temperature.FromKelvin(temperature.Kelvin - halfStep)).Pascals;
        return Energy.FromJoules(
            temperature.Kelvin * (VapourLitresPerGram(temperature) - liquidLitresPerGram) / 1000 * (above - below) / (2 * halfStep)
        );
    }

    /// <summary>Coefficients n1 to n10 of IF97, table 34; element 0 is not used, so that the numbers are the table's.</summary>
    private static readonly double[] N =
    [
        double.NaN,
        0.11670521452767e4,
        -0.72421316703206e6,
        -0.17073846940092e2,
        0.12020824702470e5,
        -0.32325550322333e7,
        0.14915108613530e2,
        -0.48232657361591e4,
        0.40511340542057e6,
        -0.23855557567849,
        0.65017534844798e3,
    ];
}
