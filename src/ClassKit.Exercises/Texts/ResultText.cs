using System.Globalization;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Texts;

/// <summary>A part's answer as people read it: rounded to what its tolerance gives meaning to.</summary>
public static class ResultText
{
    private const string NoBreakSpace = "\u00A0";
    private const int MostDecimals = 6;

    /// <summary>Beyond it no decimals are left to show, and a decimal may not hold it.</summary>
    private const double LargestRounded = 1e15;

    /// <summary>How near to the middle between two neighbours, in steps of the last place, a value may go to either.</summary>
    private const double TieWidth = 1e-6;

    /// <summary>
    /// The number and its unit: <c>724.5 g</c>, <c>65 %</c> for 0.65; the space does not break. What is chosen, in its words; nothing for
    /// what is answered in own words.
    /// </summary>
    public static string Of(Part part, double value)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.InWords is not null)
            return "";
        if (part.Choice is { } choice)
            return choice.From.Find(value)?.Words ?? "";
        return part.Unit.IsNone ? Number(part, value) : Number(part, value) + NoBreakSpace + part.Unit;
    }

    /// <summary>
    /// The number alone, in the scale shown: 65 for 0.65 in percent. Three significant digits at least; no zeros at the end, except in
    /// money.
    /// </summary>
    /// <remarks>Halves go away from zero, as a spreadsheet shows them.</remarks>
    public static string Number(Part part, double value)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (!part.IsNumber)
            return Of(part, value);
        var (shown, decimals) = Shown(part, value);
        // A decimal rounds 0.145 as it is written.
        return Math.Abs(shown) < LargestRounded
            ? Math.Round((decimal)shown, decimals, MidpointRounding.AwayFromZero)
                .ToString(part.Unit.IsMoney ? "0.00####" : "0.######", CultureInfo.InvariantCulture)
                .Replace('-', '\u2212')
            : shown.ToString("G6", CultureInfo.InvariantCulture).Replace('-', '\u2212');
    }

    /// <summary>
    /// A step's number as people read it, without its unit. No tolerance says how exactly a step is meant, so it is shown to a thousandth
    /// of itself.
    /// </summary>
    internal static string Number(WorkingStep step, double value) =>
        Number(new Part(step.Id, step.What, step.Key, step.Unit, Tolerance.Relative(0.001), 1, false, []), value);

    /// <summary>
    /// The value that <see cref="Number(Part, double)"/> prints, in the cell's own scale: what a reader of the answer key goes on with.
    /// </summary>
    public static double Rounded(Part part, double value)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (!part.IsNumber)
            return value;
        var (shown, decimals) = Shown(part, value);
        return Math.Abs(shown) < LargestRounded
            ? (double)(Math.Round((decimal)shown, decimals, MidpointRounding.AwayFromZero) / Scale(part))
            : value;
    }

    /// <summary>What rounding to the printed places gives: the same value twice, or, at a tie, the neighbours below and above.</summary>
    internal static (double Down, double Up) Neighbours(Part part, double value)
    {
        var (shown, decimals) = Shown(part, value);
        if (Math.Abs(shown) >= LargestRounded)
            return (value, value);
        var step = Math.Pow(10, -decimals);
        var places = shown / step;
        var down = Math.Floor(places);
        if (Math.Abs(places - down - 0.5) > TieWidth)
            return (Rounded(part, value), Rounded(part, value));
        return (down * step / Scale(part), (down + 1) * step / Scale(part));
    }

    private static (double Value, int Decimals) Shown(Part part, double value)
    {
        if (part.Tolerance.IsRounding)
            return (
                part.Tolerance.Nearest(value) * Scale(part),
                Math.Max(part.Unit.LeastDecimals, DecimalsOf(part.Tolerance.Amount * Scale(part)))
            );
        var shown = value * Scale(part);
        return (shown, Math.Max(part.Unit.LeastDecimals, Decimals(shown, part.Tolerance.Around(value) * Scale(part))));
    }

    private static int Scale(Part part) => part.Unit.Scale;

    /// <summary>As many places as a step is written with.</summary>
    private static int DecimalsOf(double step) =>
        Enumerable
            .Range(0, MostDecimals)
            .FirstOrDefault(places => Math.Abs(Math.Round(step, places, MidpointRounding.AwayFromZero) - step) < step * 1e-9, MostDecimals);

    /// <summary>Enough places to see a difference as large as the tolerance.</summary>
    private static int Decimals(double shown, double tolerance)
    {
        var seen = tolerance > 0 ? (int)Math.Ceiling(-Math.Log10(tolerance)) : MostDecimals;
        var significant = shown == 0 ? 0 : 2 - (int)Math.Floor(Math.Log10(Math.Abs(shown)));
        return Math.Clamp(Math.Max(seen, significant), 0, MostDecimals);
    }
}
