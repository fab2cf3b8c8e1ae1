using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Household;

/// <summary>Temperatures as people write them: <c>350 F</c>, <c>180 °C</c>.</summary>
public static partial class TemperatureNotation
{
    /// <summary>The step of an oven's dial in Celsius.</summary>
    private const double DialCelsius = 5;

    /// <summary>The step of an oven's dial in Fahrenheit: with 25, 200 °C and 210 °C would be one mark.</summary>
    private const double DialFahrenheit = 5;

    /// <summary>To the whole degree, halves away from zero: <c>177 °C (350 °F)</c>.</summary>
    public static string Show(Temperature temperature) =>
        string.Create(CultureInfo.InvariantCulture, $"{Whole(temperature.Celsius)} °C ({Whole(temperature.Fahrenheit)} °F)");

    /// <summary>What somebody wrote, in their scale: <c>28 °C</c>, and <c>27 °C (80 °F)</c> of what is whole in °F alone.</summary>
    public static string AsWritten(Temperature temperature) =>
        IsMultiple(temperature.Celsius, 1) || !IsMultiple(temperature.Fahrenheit, 1)
            ? string.Create(CultureInfo.InvariantCulture, $"{temperature.Celsius:0.#} °C")
            : Show(temperature);

    /// <summary>
    /// What to set an oven to: the nearest 5 °C and the nearest 5 °F, so that what differs in one differs in the other. What somebody wrote
    /// in whole degrees that are no such step comes back as written: 163 °C is not 165.
    /// </summary>
    public static (double Celsius, double Fahrenheit) Dial(Temperature oven)
    {
        var (celsius, fahrenheit) = (oven.Celsius, oven.Fahrenheit);
        var isStep = IsMultiple(celsius, DialCelsius) || IsMultiple(fahrenheit, DialFahrenheit);
        return (
            !isStep && IsMultiple(celsius, 1) ? Whole(celsius) : Step(celsius, DialCelsius),
            !isStep && IsMultiple(fahrenheit, 1) ? Whole(fahrenheit) : Step(fahrenheit, DialFahrenheit)
        );
    }

    private static bool IsMultiple(double degrees, double step) => Math.Abs(Step(degrees, step) - degrees) < 1e-6;

    /// <summary>
    /// Reads a number with C or F behind it, with or without a degree sign. A bare number is not read: nobody knows which it is.
    /// </summary>
    /// <param name="text">As typed.</param>
    /// <param name="temperature">What was read; 0 °C if nothing was.</param>
    public static bool TryParse(string text, out Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(text);
        temperature = default;
        var match = Shape().Match(text);
        if (
            !match.Success
            || !double.TryParse(
                match.Groups["number"].Value.Replace('−', '-'),
                NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var number
            )
        )
            return false;
        var celsius = match.Groups["unit"].Value is "F" or "f" ? (number - 32) / 1.8 : number;
        if (!double.IsFinite(celsius) || celsius < Temperature.FromKelvin(0).Celsius)
            return false;
        temperature = Temperature.FromCelsius(celsius);
        return true;
    }

    private static double Whole(double degrees) => Step(degrees, 1);

    private static double Step(double degrees, double step) => Math.Round(degrees / step, MidpointRounding.AwayFromZero) * step + 0.0;

    [GeneratedRegex(
        @"^\s*(?<number>[-−]?[0-9]+(?:\.[0-9]+)?)\s*(?:°|º|deg(?:rees)?\.?)?\s*(?<unit>[CFcf])\s*$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Shape();
}
