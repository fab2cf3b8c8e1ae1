using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Quantities;

/// <summary>Numbers as authored files write them: digits with a decimal point.</summary>
internal static class Number
{
    private const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    public static bool TryParse(string text, out decimal number) =>
        decimal.TryParse(text, Style, CultureInfo.InvariantCulture, out number);

    /// <summary>A number within bounds, or null with the reason noted; <paramref name="what"/> begins the message.</summary>
    public static double? Read(Located text, string what, Bounds bounds, ProblemList problems)
    {
        if (!TryParse(text.Text, out var number))
        {
            problems.Add(text.Line, $"{what} is `{text.Text}`, which is not a number", NumberAdvice(text.Text));
            return null;
        }
        return Within((double)number, text, what, bounds, problems);
    }

    /// <summary>A whole number within bounds, or null with the reason noted.</summary>
    public static int? ReadWhole(Located text, string what, Bounds bounds, ProblemList problems)
    {
        if (Read(text, what, bounds, problems) is not { } number)
            return null;
        if (number is >= int.MinValue and <= int.MaxValue && number == Math.Floor(number))
            return (int)number;
        problems.Add(text.Line, $"{what} is {text.Text}", $"A whole number, {bounds}, is expected.");
        return null;
    }

    public static double? Within(double number, Located text, string what, Bounds bounds, ProblemList problems)
    {
        if (bounds.Hold(number))
            return number;
        problems.Add(text.Line, $"{what} is {text.Text}", $"It must be {bounds}.");
        return null;
    }

    public static string NumberAdvice(string text) =>
        TryParse(text.Replace(',', '.'), out _) ? $"Write a decimal point: {text.Replace(',', '.')}." : "Write digits, with a decimal point where needed.";
}
