using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;

namespace ClassKit.Tests;

/// <summary>
/// Numbers of an HTML page that promise more than a kitchen can weigh, measure or compute: 98.91 °C, 97,539.57 Pa, 1.6733 L.
/// </summary>
/// <remarks>
/// Reads the text of the file and nothing that makes it. Kilograms are told to the gram, money to the cent, and what a student typed as it
/// was typed.
/// </remarks>
internal static partial class Digits
{
    /// <summary>
    /// An ounce in grams (NIST Handbook 44), carbon dioxide and soda in grams a mole and the neutralising value of lactic acid (IUPAC
    /// weights), the zero of Celsius in kelvin, the upper quartile of the normal distribution (Iglewicz and Hoaglin 1993).
    /// </summary>
    private static readonly string[] Published = ["28.35", "44.009", "84.006", "93.26", "273.15", "0.6745"];

    /// <summary>
    /// More than one decimal from ten on, more than three from one on, as steam tables have, more than three digits below.
    /// </summary>
    public static IReadOnlyList<string> TooFine(string html) =>
        [
            .. Number()
                .Matches(Text(html))
                .Where(number =>
                    !Published.Contains(number.Groups["digits"].Value)
                    && number.Groups["unit"].Value is not ("kg" or "USD")
                    && IsTooFine(number.Groups["digits"].Value)
                )
                .Select(number => number.Value),
        ];

    private static bool IsTooFine(string digits)
    {
        var plain = GroupSign().Replace(digits, "");
        var decimals = plain.Length - plain.IndexOf('.', StringComparison.Ordinal) - 1;
        return double.Parse(plain, CultureInfo.InvariantCulture) switch
        {
            >= 10 => decimals > 1,
            >= 1 => decimals > 3,
            _ => plain.TrimStart('0', '.').Length > 3,
        };
    }

    private static string Text(string html) =>
        Quoted().Replace(WebUtility.HtmlDecode(AnyTag().Replace(Hidden().Replace(html, " "), " ")), " ");

    [GeneratedRegex(@"<(script|style|svg|code|bdi)\b.*?</\1>|<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex Hidden();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex AnyTag();

    /// <summary>What somebody else wrote, and where a law's paragraph stands.</summary>
    [GeneratedRegex(@"“[^”]*”|(Food Code|CFR|WAC)[^()]*")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"(?<![\w.,-])(?<digits>[0-9][0-9,\u202F]*\.[0-9]+)(?![\w.-]*[0-9])(\s*(?<unit>[A-Za-zµ°%]+))?")]
    private static partial Regex Number();

    [GeneratedRegex("[,\u202F]")]
    private static partial Regex GroupSign();
}
