using System.Globalization;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Wording.Numbers;

/// <summary>Numbers and quantities as a page prints them: the same in every culture.</summary>
/// <remarks>
/// A space stands between number and unit, and digits are grouped in threes by a thin space from five digits on
/// (NIST SP 811, 7.2 and 10.5.3). The spaces do not break.
/// </remarks>
public static class NumberText
{
    private const char Minus = '\u2212';
    private const char UnitSpace = '\u00A0';
    private const char GroupSpace = '\u202F';

    /// <summary>A number with so many decimals; ties go away from zero, as a spreadsheet shows them.</summary>
    public static string Fixed(double value, int decimals)
    {
        var digits = Rounded(value, decimals).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return Dressed(digits);
    }

    /// <summary>A number with at most so many decimals: no zeros at the end.</summary>
    public static string AtMost(double value, int decimals) => Exact(Rounded(value, decimals), decimals);

    /// <summary>An exact number with at most so many decimals: no zeros at the end.</summary>
    public static string Exact(decimal value, int decimals) =>
        Dressed(
            Math.Round(value, decimals, MidpointRounding.AwayFromZero)
                .ToString(decimals == 0 ? "0" : "0." + new string('#', decimals), CultureInfo.InvariantCulture)
        );

    /// <summary>A whole-number percentage of a share from 0 to 1.</summary>
    public static string Share(double share) => WithUnit(AtMost(Unit.Percent.Shown(share), 0), Unit.Percent.Sign);

    /// <inheritdoc cref="Share(double)"/>
    public static string Share(decimal share) => WithUnit(Exact(Unit.Percent.Shown(share), 0), Unit.Percent.Sign);

    /// <summary>Points: whole, or with as many as two decimals.</summary>
    public static string Points(decimal points) => Exact(points, 2);

    /// <summary>A number and its unit, never parted at the end of a line.</summary>
    public static string WithUnit(string number, string unit) => unit.Length == 0 ? number : number + UnitSpace + unit;

    private static decimal Rounded(double value, int decimals) =>
        // Within what a decimal holds, decimal arithmetic rounds 0.145 as it is written; beyond, decimals do not matter.
        Math.Abs(value) < 1e15
            ? Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero)
            : Math.Truncate((decimal)Math.Clamp(value, -1e27, 1e27));

    private static string Dressed(string digits)
    {
        var negative = digits.StartsWith('-');
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var whole = digits[(negative ? 1 : 0)..(point < 0 ? digits.Length : point)];
        var rest = point < 0 ? "" : digits[point..];
        if (whole.Length >= 5)
        {
            for (var at = whole.Length - 3; at > 0; at -= 3)
                whole = whole.Insert(at, GroupSpace.ToString());
        }
        var isZero = !digits.AsSpan().ContainsAnyInRange('1', '9');
        return (negative && !isZero ? Minus.ToString() : "") + whole + rest;
    }

    /// <summary>A moment of the class in hours and minutes since it began: <c>1:05</c>, <c>−0:10</c> before it.</summary>
    public static string Clock(int minutes) =>
        string.Create(CultureInfo.InvariantCulture, $"{(minutes < 0 ? "−" : "")}{Math.Abs(minutes) / 60}:{Math.Abs(minutes) % 60:00}");
}
