using System.Globalization;
using System.Text.RegularExpressions;

namespace ClassKit.Grading;

/// <summary>Reads numbers that students type as text: <c>182 g</c>, <c>0,65</c>, <c>1 1/2</c>, <c>65 %</c>, <c>1.250,5</c>.</summary>
public static partial class AnswerText
{
    /// <summary>What a typed number looks like: a number or a (mixed) fraction, then a unit that has no digits in it. ECMAScript reads it alike.</summary>
    public const string Pattern =
        @"^(?:≈|~|=)?\s*(?<sign>[+-])?\s*(?:(?:(?<whole>[0-9]{1,9})\s+)?(?<top>[0-9]{1,9})\s*/\s*(?<bottom>[0-9]{1,9})|(?<number>[0-9]{1,3}(?:[ '][0-9]{3})+(?:[.,][0-9]{1,30})?|[0-9][0-9.,]{0,40}(?:[eE][+-]?[0-9]{1,3})?|[.,][0-9]{1,30}))\s*(?<unit>[^0-9]{0,24})$";

    /// <summary>Every number that the text can sensibly mean in a cell that asks for <paramref name="unit"/>.</summary>
    /// <returns>The likeliest first; empty for text that is no number. <c>1,250</c> may be 1.25 or 1250, so both are given.</returns>
    public static IReadOnlyList<double> Read(string text, string unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(unit);
        var match = Shape().Match(text.Trim().Replace('\u2212', '-').Replace('\u00A0', ' ').Replace('\u202F', ' '));
        if (!match.Success) return [];

        var sign = match.Groups["sign"].Value == "-" ? -1 : 1;
        var suffix = match.Groups["unit"].Value.Trim();
        return [.. Magnitudes(match).Select(magnitude => AnswerUnits.Convert(sign * magnitude, suffix, unit)).Distinct()];
    }

    private static IEnumerable<double> Magnitudes(Match match)
    {
        if (match.Groups["top"].Success)
        {
            var whole = match.Groups["whole"].Success ? Parse(match.Groups["whole"].Value) : 0;
            var bottom = Parse(match.Groups["bottom"].Value);
            return bottom == 0 ? [] : [whole + Parse(match.Groups["top"].Value) / bottom];
        }
        return Spellings(match.Groups["number"].Value.Replace(" ", "", StringComparison.Ordinal).Replace("'", "", StringComparison.Ordinal))
            .Where(IsNumber).Select(Parse);
    }

    /// <summary>The number with a point for its decimals and nothing between its thousands, in every way it can be read.</summary>
    private static IEnumerable<string> Spellings(string number)
    {
        var point = number.LastIndexOf('.');
        var comma = number.LastIndexOf(',');
        if (point >= 0 && comma >= 0)
        {
            // Both are there: the last one is the decimal mark.
            var (mark, other) = point > comma ? ('.', ',') : (',', '.');
            yield return number.Replace(other.ToString(), "", StringComparison.Ordinal).Replace(mark, '.');
            yield break;
        }
        var used = point >= 0 ? '.' : ',';
        var isGrouped = Grouped().IsMatch(number);
        if (number.Count(character => character == used) <= 1)
            yield return number.Replace(used, '.');
        if (isGrouped)
            yield return number.Replace(used.ToString(), "", StringComparison.Ordinal);
    }

    private static bool IsNumber(string number) => double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private static double Parse(string number) => double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(Pattern, RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 200)]
    private static partial Regex Shape();

    [GeneratedRegex(@"^[0-9]{1,3}([.,][0-9]{3})+$", RegexOptions.CultureInvariant)]
    private static partial Regex Grouped();
}
