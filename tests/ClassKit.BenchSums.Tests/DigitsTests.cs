using System.Text.RegularExpressions;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Tests;

/// <summary>
/// Nobody at a bench can use, and no model here gives, more than three digits of a part: <c>98.91 °C</c> promises what nobody knows.
/// </summary>
public sealed partial class DigitsTests
{
    /// <summary>
    /// Published constants of the workings: carbon dioxide and soda (IUPAC), sodium of salt (IUPAC), the atmosphere (US Standard Atmosphere
    /// 1976), heat of ice and water (CRC Handbook), neutralising values.
    /// </summary>
    private static readonly string[] Published =
    [
        "44.009",
        "84.006",
        "0.0065",
        "288.15",
        "5.25588",
        "8.314462618",
        "2.108",
        "4.187",
        "93.26",
    ];

    public static TheoryData<string> Sums => [.. BenchSumCatalogue.All.Select(sum => sum.Id)];

    [Theory]
    [MemberData(nameof(Sums))]
    public void A_sum_is_told_in_no_more_digits_than_can_be_known(string id)
    {
        var result = Typing.Example(BenchSumCatalogue.Find(id)!).Value;
        Assert.All(result.Lines, line => Assert.False(IsTooFine(QuantityText.Show(line.Quantity)), QuantityText.Show(line.Quantity)));
        Assert.All(result.Workings.SelectMany(working => working.Steps), step => Assert.False(IsTooFine(step.ToString()), step.ToString()));
    }

    [Theory]
    [InlineData("98.91 °C")]
    [InlineData("97,539.57 Pa")]
    [InlineData("16,747.06 g")]
    [InlineData("1.6733 L/g")]
    public void What_was_too_fine_once_is_seen(string text) => Assert.True(IsTooFine(text));

    private static bool IsTooFine(string text) =>
        Number().Matches(text).Select(match => match.Value).Any(number => IsTooFine(number, text));

    /// <summary>
    /// Masses from a kilogram up are read to the gram, money to the cent, percentages, pressures and degrees of Fahrenheit to a tenth.
    /// </summary>
    private static bool IsTooFine(string number, string text)
    {
        if (Published.Contains(number))
            return false;
        var decimals = number.Length - number.IndexOf('.', StringComparison.Ordinal) - 1;
        var digits =
            number.Count(char.IsAsciiDigit)
            - (number.StartsWith('0') ? number.TakeWhile(sign => sign is '0' or '.' or ',').Count(char.IsAsciiDigit) : 0);
        var isInKilograms = text.Contains($"{number} kg", StringComparison.Ordinal);
        var isMoney = decimals == 2 && Regex.IsMatch(text, $@"(^|[=×/+(] ?){Regex.Escape(number)}($| [=×/+)])");
        return digits > 3 && decimals > 1 && !isInKilograms && !isMoney;
    }

    [GeneratedRegex(@"[0-9][0-9,]*\.[0-9]+")]
    private static partial Regex Number();
}
