using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Classes;

/// <summary>
/// Reads a price as people and cash registers write it: <c>5.90</c>, <c>5,90 €</c>, <c>$1,250.00</c>, <c>EUR 1.250,00</c>.
/// </summary>
internal static partial class PriceCell
{
    /// <summary>The signs of currencies that go by one code only; a dollar may be anybody's.</summary>
    private static readonly Dictionary<string, string> Signs = new(StringComparer.Ordinal)
    {
        ["€"] = "EUR",
        ["£"] = "GBP",
        ["₹"] = "INR",
        ["₩"] = "KRW",
        ["₺"] = "TRY",
        ["zł"] = "PLN",
        ["Kč"] = "CZK",
    };

    /// <summary>From a gift to more than any pack of food costs.</summary>
    private static readonly Bounds Prices = new(0, true, 1_000_000);

    /// <summary>The amount, or null with the reason noted.</summary>
    /// <param name="text">The cell.</param>
    /// <param name="currency">What the list says that its prices are in.</param>
    /// <param name="problems">Gathers what is wrong.</param>
    public static decimal? Read(Located text, string? currency, ProblemList problems)
    {
        var match = Amount().Match(text.Text);
        if (!match.Success)
            return (decimal?)Number.Read(text, "The price", Prices, problems);
        var named = string.Concat(match.Groups["before"].Value, match.Groups["after"].Value).Trim();
        if (currency is not null && named.Length > 0 && !Means(named, currency))
        {
            problems.Add(
                text.Line,
                $"The price is `{text.Text}`, and the list is in {currency}",
                "A list has one currency: write this price in it, or correct `currency`."
            );
            return null;
        }
        var digits = match
            .Groups["digits"]
            .Value.Replace(" ", "", StringComparison.Ordinal)
            .Replace("\u00A0", "", StringComparison.Ordinal)
            .Replace("'", "", StringComparison.Ordinal);
        if (Doubtful().IsMatch(digits))
        {
            problems.Add(
                text.Line,
                $"The price is `{text.Text}`, which may be {digits.Replace(',', '.')} or {digits.Replace(",", "", StringComparison.Ordinal)}",
                "Write two decimals, or no comma."
            );
            return null;
        }
        return decimal.TryParse(
            Pointed(digits),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var price
        )
            ? (decimal?)Number.Within((double)price, text, "The price", Prices, problems)
            : (decimal?)Number.Read(text, "The price", Prices, problems);
    }

    /// <summary>Of two kinds of signs the last is the decimal one; a comma alone is one too.</summary>
    private static string Pointed(string digits)
    {
        var (comma, point) = (digits.LastIndexOf(','), digits.LastIndexOf('.'));
        return comma > point
            ? digits.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')
            : digits.Replace(",", "", StringComparison.Ordinal);
    }

    /// <summary>A sign that many countries use, and words that are no code, are taken on trust.</summary>
    private static bool Means(string named, string currency) =>
        named.Equals(currency, StringComparison.OrdinalIgnoreCase)
        || (
            Signs.TryGetValue(named, out var code)
                ? Signs.GetValueOrDefault(currency, currency).Equals(code, StringComparison.OrdinalIgnoreCase)
            : Signs.TryGetValue(currency, out var sign) ? named.Equals(sign, StringComparison.OrdinalIgnoreCase)
            : !Code().IsMatch(named) && !(named == "$" && Signs.ContainsValue(currency.ToUpperInvariant()))
        );

    [GeneratedRegex(@"^(?<before>[^\d\s.,+-]{0,5})\s*(?<digits>-?\d[\d .,'\u00A0]*?)\s*(?<after>[^\d\s.,]{0,5}\.?)$")]
    private static partial Regex Amount();

    [GeneratedRegex(@"^-?[1-9]\d{0,2},\d{3}$")]
    private static partial Regex Doubtful();

    [GeneratedRegex("^[A-Za-z]{3}$")]
    private static partial Regex Code();
}
