using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Answers;

/// <summary>
/// Reads numbers that students type as text: <c>182 g</c>, <c>0,65</c>, <c>1½</c>, <c>x = 65 %</c>, <c>about 1.250,5</c>, <c>1.8·10²</c>.
/// </summary>
public static partial class AnswerText
{
    /// <summary>
    /// A number in any grouping: threes between spaces or apostrophes, twos and threes between apostrophes (CLDR's <c>#,##,##0</c>), or
    /// points and commas, looked at later.
    /// </summary>
    private const string Number =
        @"[0-9]{1,3}(?: [0-9]{3})+(?:[.,\u066B][0-9]{1,30})?|[0-9]{1,3}(?:'[0-9]{2,3})*'[0-9]{3}(?:[.,\u066B][0-9]{1,30})?|[0-9][0-9.,\u066B]{0,40}|[.,\u066B][0-9]{1,30}";

    /// <summary>What may stand before it: a name for it (<c>x =</c>, <c>flour:</c>), or words that say it is not exact.</summary>
    private const string Lead =
        @"'?\s*(?:(?:\p{L}[\p{L}\p{M}]{0,20}[0-9_]{0,3}(?: \p{L}[\p{L}\p{M}]{0,20}[0-9_]{0,3}){0,4}\s*[=:~]\s*|[=~]\s*|(?:about|around|approx|approximately|roughly|nearly|circa|ca|c|exactly|is|etwa|rund|environ|ongeveer)(?!\p{L})\.?\s*)){0,3}";

    /// <summary>
    /// What may stand behind it: a unit with more words, none that makes it another number; <c>times</c> alone is the unit of a factor.
    /// </summary>
    private const string Unit =
        @"[.,;!]?\s*(?<unit>(?:(?!(?:x|or|to|and|plus|minus|times(?!\s*$)|dozen|hundred|thousand|million|billion|und|oder|bis|et|ou)(?!\p{L}))[\p{L}\p{Sc}%‰°µ(][^0-9+=<>^~±]{0,40})?)";

    private const string Power = @"10\s*(?:(?:\^|\*\*)\s*\(?(?<power>[+-]?[0-9]{1,3})\)?|(?<raised>[⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]{1,3}))";

    /// <summary>
    /// What a typed number looks like once <see cref="TypedText"/> has folded it: a power of ten, a (mixed) fraction or a number, with a
    /// sign of money or a unit. ECMAScript reads it alike; both take it without regard to letter case.
    /// </summary>
    public const string Pattern =
        "^"
        + Lead
        + @"(?<head>[+-]?\s*(?:\p{Sc}\s*)?|\p{Sc}\s*[+-]\s*)(?:(?:(?<mantissa>"
        + Number
        + @")\s*[*x]\s*)?"
        + Power
        + @"|(?:(?<whole>[0-9]{1,9})(?:\s+|-(?=[0-9]{1,2}\s*/\s*[0-9]{1,2}(?![0-9]))))?(?<top>[0-9]{1,9})\s*/\s*(?<bottom>[0-9]{1,9})|(?<number>"
        + Number
        + @")(?:e(?<exponent>[+-]?[0-9]{1,3}))?)\s*"
        + Unit
        + "$";

    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>Every number that the text can sensibly mean in a cell that asks for <paramref name="unit"/>.</summary>
    /// <returns>The likeliest first; empty for text that is no number. <c>1,250</c> may be 1.25 or 1250, so both are given.</returns>
    public static IReadOnlyList<double> Read(string text, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(unit);
        if (text.Length > TypedText.Longest || Shape().Match(TypedText.Fold(text)) is not { Success: true } match)
            return [];

        var (head, behind) = (match.Groups["head"].Value, match.Groups["unit"].Value);
        if (!unit.IsMoney && (head + behind).Any(character => char.GetUnicodeCategory(character) == UnicodeCategory.CurrencySymbol))
            return [];
        var sign = head.Contains('-', StringComparison.Ordinal) ? -1 : 1;
        return
        [
            .. Magnitudes(match)
                .Where(double.IsFinite)
                .Select(magnitude => WrittenUnits.Convert(sign * magnitude, behind, unit))
                .Distinct(),
        ];
    }

    private static IEnumerable<double> Magnitudes(Match match)
    {
        if (match.Groups["top"].Success)
        {
            var whole = match.Groups["whole"].Success ? Parse(match.Groups["whole"].Value) : 0;
            var bottom = Parse(match.Groups["bottom"].Value);
            return bottom == 0 ? [] : [whole + Parse(match.Groups["top"].Value) / bottom];
        }
        if (match.Groups["number"].Success)
            return Numbers(match.Groups["number"].Value, match.Groups["exponent"].Value);
        var power = match.Groups["power"].Success ? match.Groups["power"].Value : Lowered(match.Groups["raised"].Value);
        return match.Groups["mantissa"].Success ? Numbers(match.Groups["mantissa"].Value, power) : Numbers("1", power);
    }

    private static IEnumerable<double> Numbers(string number, string exponent) =>
        Spellings(number.Replace(" ", "", StringComparison.Ordinal).Replace("'", "", StringComparison.Ordinal))
            .Select(spelling => exponent.Length == 0 ? spelling : $"{spelling}e{exponent}")
            .Where(IsNumber)
            .Select(Parse);

    /// <summary>The number with a point for its decimals and nothing between its thousands, in every way it can be read.</summary>
    private static List<string> Spellings(string number)
    {
        var at = number.LastIndexOfAny(['.', ',', TypedText.ArabicDecimal]);
        if (at < 0)
            return [number];
        var (whole, decimals) = (number[..at], number[(at + 1)..]);
        // Of two kinds of mark the last one is the decimal mark; of one kind it may be either, if it stands once.
        var isDecimal =
            !whole.Contains(number[at], StringComparison.Ordinal) && (!whole.AsSpan().ContainsAny('.', ',') || Grouped().IsMatch(whole));
        List<string> spellings = [];
        if (isDecimal)
            spellings.Add($"{Plain(whole)}.{decimals}");
        if (Grouped().IsMatch(number))
            spellings.Add(Plain(number));
        return spellings;
    }

    private static string Plain(string whole) =>
        whole.Replace(".", "", StringComparison.Ordinal).Replace(",", "", StringComparison.Ordinal);

    /// <summary>Superscripts as an exponent.</summary>
    internal static string Lowered(string raised) =>
        string.Concat(
            raised.Select(character =>
                character switch
                {
                    '⁻' => "-",
                    '⁺' => "",
                    _ => Raised.IndexOf(character, StringComparison.Ordinal).ToString(CultureInfo.InvariantCulture),
                }
            )
        );

    private static bool IsNumber(string number) => double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private static double Parse(string number) => double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);

    // No time limit: a busy machine must not decide what an answer is. Texts are short, and every repetition is bounded.
    [GeneratedRegex(Pattern, RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Shape();

    [GeneratedRegex(
        @"^(?:[0-9]{1,3}(?:,[0-9]{3})+|[0-9]{1,3}(?:\.[0-9]{3})+|[0-9]{1,2}(?:,[0-9]{2})*,[0-9]{3})$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Grouped();
}
