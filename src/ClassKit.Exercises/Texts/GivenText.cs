using System.Globalization;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Texts;

/// <summary>A given's value as people read it.</summary>
public static class GivenText
{
    private const string NoBreakSpace = "\u00A0";

    /// <summary>
    /// How many decimals tell every possible value of a given from its neighbours, in the scale shown: 0 for 60 % to 70 % in steps of 1 %,
    /// and 2 at least for money.
    /// </summary>
    public static int Decimals(Given given)
    {
        ArgumentNullException.ThrowIfNull(given);
        return Math.Max(given.Unit.LeastDecimals, Math.Max(ScaleOf(Shown(given, given.From)), ScaleOf(Shown(given, given.Step))));
    }

    /// <summary>The value with the given's decimals and its unit: <c>24.5 °C</c>, <c>65 %</c> for 0.65; the space does not break.</summary>
    public static string Of(Given given, decimal value)
    {
        ArgumentNullException.ThrowIfNull(given);
        return given.Unit.IsNone ? Number(given, value) : Number(given, value) + NoBreakSpace + given.Unit;
    }

    /// <summary>The number alone, in the scale shown: 65 for 0.65 in percent.</summary>
    public static string Number(Given given, decimal value) =>
        Shown(given, value).ToString("F" + Decimals(given).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static decimal Shown(Given given, decimal value) => given.Unit.Shown(value);

    // Dividing by a long 1 drops the zeros at the end: 0.650 has a scale of 3, and 2 afterwards.
    private static int ScaleOf(decimal value) => (value / 1.000000000000000000000000000000000m).Scale;
}
