namespace ClassKit.Grading;

/// <summary>Units that students write behind a typed number, and what they make of it in the unit asked for.</summary>
internal static class AnswerUnits
{
    // Exact: NIST SP 811, appendix B. Litres, teaspoons and the like are not mixed with masses: that would need a density.
    private static readonly Dictionary<string, (string Kind, double Factor)> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        ["mg"] = ("mass", 0.001),
        ["g"] = ("mass", 1),
        ["gr"] = ("mass", 1),
        ["gram"] = ("mass", 1),
        ["grams"] = ("mass", 1),
        ["kg"] = ("mass", 1000),
        ["oz"] = ("mass", 28.349523125),
        ["lb"] = ("mass", 453.59237),
        ["lbs"] = ("mass", 453.59237),
        ["ml"] = ("volume", 1),
        ["cl"] = ("volume", 10),
        ["dl"] = ("volume", 100),
        ["l"] = ("volume", 1000),
        ["litre"] = ("volume", 1000),
        ["litres"] = ("volume", 1000),
        ["liter"] = ("volume", 1000),
        ["liters"] = ("volume", 1000),
    };

    /// <summary>A typed number with the unit behind it, as a number of the unit asked for; unknown words leave it as it is.</summary>
    public static double Convert(double number, string written, string asked)
    {
        if (written is "%" or "percent" or "per cent") return number / 100;
        var (from, to) = (Bare(written), Bare(asked));
        if (IsCelsius(from) && IsFahrenheit(to)) return number * 1.8 + 32;
        if (IsFahrenheit(from) && IsCelsius(to)) return (number - 32) / 1.8;
        return Known.TryGetValue(from, out var source) && Known.TryGetValue(to, out var target) && source.Kind == target.Kind && source.Factor != target.Factor
            ? number * source.Factor / target.Factor
            : number;
    }

    private static string Bare(string unit) => unit.Trim().TrimEnd('.');

    private static bool IsCelsius(string unit) => unit is "°C" or "C" or "c" or "°c" or "deg C" or "Celsius" or "celsius";

    private static bool IsFahrenheit(string unit) => unit is "°F" or "F" or "f" or "°f" or "deg F" or "Fahrenheit" or "fahrenheit";
}
