using System.Globalization;

namespace ClassKit.Exercises;

/// <summary>A part's answer as people read it: rounded to what its tolerance gives meaning to.</summary>
public static class ResultText
{
    private const string NoBreakSpace = "\u00A0";
    private const int MostDecimals = 6;

    /// <summary>The number and its unit: <c>724.5 g</c>, <c>65 %</c> for 0.65; the space does not break.</summary>
    public static string Of(Part part, double value)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Unit.Length == 0 ? Number(part, value) : Number(part, value) + NoBreakSpace + part.Unit;
    }

    /// <summary>The number alone, in the scale shown: 65 for 0.65 in percent. Three significant digits at least; no zeros at the end.</summary>
    /// <remarks>Halves go away from zero, as a spreadsheet shows them.</remarks>
    public static string Number(Part part, double value)
    {
        ArgumentNullException.ThrowIfNull(part);
        var scale = AnswerUnit.IsPercent(part.Unit) ? 100 : 1;
        var shown = value * scale;
        var decimals = Decimals(shown, part.Tolerance.Around(value) * scale);
        // A decimal rounds 0.145 as it is written; beyond its range no decimals are left to show.
        return Math.Abs(shown) < 1e15
            ? Math.Round((decimal)shown, decimals, MidpointRounding.AwayFromZero).ToString("0.######", CultureInfo.InvariantCulture).Replace('-', '\u2212')
            : shown.ToString("G6", CultureInfo.InvariantCulture).Replace('-', '\u2212');
    }

    /// <summary>Enough places to see a difference as large as the tolerance.</summary>
    private static int Decimals(double shown, double tolerance)
    {
        var seen = tolerance > 0 ? (int)Math.Ceiling(-Math.Log10(tolerance)) : MostDecimals;
        var significant = shown == 0 ? 0 : 2 - (int)Math.Floor(Math.Log10(Math.Abs(shown)));
        return Math.Clamp(Math.Max(seen, significant), 0, MostDecimals);
    }
}
