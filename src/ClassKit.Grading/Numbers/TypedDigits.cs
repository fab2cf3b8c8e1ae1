using System.Globalization;

namespace ClassKit.Grading.Numbers;

/// <summary>How far the digits of a typed number say what it is.</summary>
internal static class TypedDigits
{
    private const int Fewest = 3;

    /// <summary>Room for the last bits of a half that is worked out.</summary>
    private const double OrAHairMore = 1 + 1e-6;

    private const double Noise = 1e-9;

    /// <summary>Half of the last digit that is written out, above 0: 0.05 for 12.3, and 0.5 for 120.</summary>
    public static double HalfOfLast(double typed) => Math.Pow(10, -Decimals(Text(typed))) / 2;

    /// <summary>
    /// True if a number is what a method gives, as far as it is written out: to all of its own digits, of which it has at least three.
    /// </summary>
    public static bool AreThoseOf(double given, double typed)
    {
        var text = Text(typed);
        return text.Where(char.IsAsciiDigit).SkipWhile(digit => digit == '0').Count() >= Fewest
            && Math.Abs(given - typed) <= HalfOfLast(typed) * OrAHairMore + Noise * Math.Abs(given);
    }

    /// <summary>True if a number agrees with what a method gives to three digits.</summary>
    public static bool AgreeToThree(double given, double typed) =>
        Near.Computed.Same(given, typed)
        || (given != 0 && Math.Abs(given - typed) <= Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(given))) - Fewest + 1) / 2);

    private static string Text(double typed) => typed.ToString("0.###############", CultureInfo.InvariantCulture);

    private static int Decimals(string text) =>
        text.IndexOf('.', StringComparison.Ordinal) is >= 0 and var point ? text.Length - point - 1 : 0;
}
