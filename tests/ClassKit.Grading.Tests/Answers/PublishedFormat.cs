using System.Globalization;
using System.Text;

namespace ClassKit.Grading.Tests.Answers;

/// <summary>How a language writes numbers, as the Unicode Common Locale Data Repository publishes it.</summary>
/// <param name="Locale">The locale.</param>
/// <param name="Zero">The zero of its digits.</param>
/// <param name="Decimal">Between whole and decimals.</param>
/// <param name="Group">Between groups.</param>
/// <param name="Minus">Before a negative number.</param>
/// <param name="Exponential">Before the exponent.</param>
/// <param name="IsIndian">True for <c>#,##,##0.###</c>, false for <c>#,##0.###</c>.</param>
internal sealed record PublishedFormat(
    string Locale,
    string Zero,
    string Decimal,
    string Group,
    string Minus,
    string Exponential,
    bool IsIndian = false
)
{
    /// <summary>
    /// fa, de-CH, sv and bn were read from unicode-org/cldr-json, cldr-numbers-full/main/*/numbers.json (CLDR 45 and later); the others are
    /// from memory of the same files.
    /// </summary>
    public static IReadOnlyList<PublishedFormat> All { get; } =
    [
        new("en", "0", ".", ",", "-", "E"),
        new("de", "0", ",", ".", "-", "E"),
        new("de-AT", "0", ",", "\u00A0", "-", "E"),
        new("de-CH", "0", ".", "’", "-", "E"),
        new("de-CH (later)", "0", ".", "'", "-", "E"),
        new("fr", "0", ",", "\u202F", "-", "E"),
        new("es", "0", ",", ".", "-", "E"),
        new("pl", "0", ",", "\u00A0", "-", "E"),
        new("pt-PT", "0", ",", "\u00A0", "-", "E"),
        new("sv", "0", ",", "\u00A0", "\u2212", "×10^"),
        new("nb", "0", ",", "\u00A0", "\u2212", "E"),
        new("hr", "0", ",", ".", "\u2212", "E"),
        new("he", "0", ".", ",", "\u200E-", "E"),
        new("en-IN", "0", ".", ",", "-", "E", IsIndian: true),
        new("hi-u-nu-deva", "०", ".", ",", "-", "E", IsIndian: true),
        new("bn", "০", ".", ",", "-", "E", IsIndian: true),
        new("fa", "۰", "٫", "٬", "\u200E\u2212", "×۱۰^"),
        new("ur-u-nu-arabext", "۰", "٫", "٬", "\u200E-", "×۱۰^"),
        new("ar-EG", "٠", "٫", "٬", "\u061C-", "E"),
        new("my", "၀", ".", ",", "-", "E"),
        new("ja-u-nu-fullwide", "０", ".", ",", "-", "E"),
    ];

    /// <summary>A number with grouping and at most three decimals.</summary>
    public string Of(decimal number)
    {
        var plain = Math.Abs(number).ToString("0.###", CultureInfo.InvariantCulture).Split('.');
        return (number < 0 ? Minus : "") + Grouped(plain[0]) + (plain.Length > 1 ? Decimal + Digits(plain[1]) : "");
    }

    /// <summary>A number in scientific notation, one digit before its decimals.</summary>
    public string Scientific(decimal mantissa, int exponent) =>
        Of(mantissa) + Exponential + (exponent < 0 ? Minus : "") + Digits(Math.Abs(exponent).ToString(CultureInfo.InvariantCulture));

    private string Grouped(string whole)
    {
        var grouped = new StringBuilder();
        for (var at = 0; at < whole.Length; at++)
        {
            var left = whole.Length - at;
            if (at > 0 && (left == 3 || (left > 3 && (left - 3) % (IsIndian ? 2 : 3) == 0)))
                grouped.Append(Group);
            grouped.Append(Digits(whole[at].ToString()));
        }
        return grouped.ToString();
    }

    private string Digits(string ascii) =>
        string.Concat(ascii.Select(digit => char.ConvertFromUtf32(char.ConvertToUtf32(Zero, 0) + digit - '0')));
}
