using ClassKit.Exercises;

namespace ClassKit.Workbooks;

/// <summary>How cells show their numbers. A format never changes a value.</summary>
internal static class NumberFormats
{
    private const int MostDecimals = 6;

    /// <summary>A given with the decimals that its steps need.</summary>
    public static string Of(Given given) => Fixed(GivenText.Decimals(given), AnswerUnit.IsPercent(given.Unit));

    /// <summary>An answer with the decimals that its tolerance can tell; null, for whatever fits, without an absolute tolerance.</summary>
    public static string? Of(Part part)
    {
        var isPercent = AnswerUnit.IsPercent(part.Unit);
        if (part.Tolerance.IsRelative || part.Tolerance.Amount <= 0) return isPercent ? Fixed(1, true) : null;
        var shown = part.Tolerance.Amount * (isPercent ? 100 : 1);
        return Fixed(Math.Clamp((int)Math.Ceiling(-Math.Log10(shown)), 0, MostDecimals), isPercent);
    }

    private static string Fixed(int decimals, bool isPercent) =>
        (decimals == 0 ? "0" : "0." + new string('0', decimals)) + (isPercent ? " %" : "");
}
