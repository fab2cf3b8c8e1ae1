using System.Globalization;

namespace ClassKit.Grading.NearMisses;

/// <summary>When two numbers are one.</summary>
internal static class SameNumber
{
    /// <summary>Two ways of working out the same number differ by less, relative to it.</summary>
    private const double Noise = 1e-9;

    private const int FewestDigits = 3;

    /// <summary>True if they differ by noise only.</summary>
    public static bool Is(double one, double other) => Math.Abs(one - other) <= Noise * Math.Max(Math.Abs(one), 1e-6);

    /// <summary>
    /// True if a number is what a method gives, as far as it is written out: to all of its own digits, of which it has at least three.
    /// </summary>
    public static bool IsWritten(double typed, double given)
    {
        var text = typed.ToString("0.###############", CultureInfo.InvariantCulture);
        var digits = text.Replace(".", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal).TrimStart('0').Length;
        var point = text.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : text.Length - point - 1;
        return digits >= FewestDigits && Math.Abs(given - typed) <= Math.Pow(10, -decimals) / 2 * (1 + 1e-6) + Noise * Math.Abs(given);
    }

    /// <summary>True if a number agrees with what a method gives to three digits.</summary>
    public static bool IsToThreeDigits(double typed, double given) =>
        Is(given, typed)
        || (given != 0 && Math.Abs(given - typed) <= Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(given))) - FewestDigits + 1) / 2);
}
