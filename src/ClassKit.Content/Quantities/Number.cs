using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Quantities;

/// <summary>Numbers as authored files write them: digits with a decimal point.</summary>
internal static partial class Number
{
    private const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    public static bool TryParse(string text, out decimal number) => decimal.TryParse(text, Style, CultureInfo.InvariantCulture, out number);

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
        text switch
        {
            _ when Thousands().IsMatch(text) =>
                $"Write it without a comma: {text.Replace(",", "", StringComparison.Ordinal)}. If the comma is a decimal point, write a point.",
            _ when TryParse(text.Replace(',', '.'), out _) => $"Write a decimal point: {text.Replace(',', '.')}.",
            _ when WithUnit().Match(text) is { Success: true } match => $"Write the number alone: {match.Groups[1].Value}.",
            _ => "Write digits, with a decimal point where needed.",
        };

    [GeneratedRegex("^[-+]?[0-9]{1,3}(,[0-9]{3})+$")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"^([-+]?[0-9]+(\.[0-9]+)?)\s*[^0-9.,\s].*$")]
    private static partial Regex WithUnit();
}
