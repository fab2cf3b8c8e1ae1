using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Tests.Numbers;

public sealed class NumberTextTests
{
    /// <summary>Grouping in threes by a thin space: NIST SP 811, 10.5.3, which leaves four digits together or not as one likes.</summary>
    [Theory]
    [InlineData(999, "999")]
    [InlineData(1234, "1234")]
    [InlineData(12345, "12\u202F345")]
    [InlineData(1234567.5, "1\u202F234\u202F567.5")]
    [InlineData(-12345, "\u221212\u202F345")]
    public void Digits_are_grouped_from_five_on(double value, string text) => Assert.Equal(text, NumberText.AtMost(value, 2));

    /// <summary>OpenFormula 1.3, 6.17.5 (ROUND): halves go away from zero, 23.945 as it is written.</summary>
    [Theory]
    [InlineData(2.5, 0, "3")]
    [InlineData(-2.5, 0, "\u22123")]
    [InlineData(23.945, 2, "23.95")]
    [InlineData(0.145, 2, "0.15")]
    public void Halves_go_away_from_zero(double value, int decimals, string text) => Assert.Equal(text, NumberText.Fixed(value, decimals));

    [Fact]
    public void What_rounds_to_nothing_has_no_sign() => Assert.Equal("0.0", NumberText.Fixed(-0.04, 1));

    [Fact]
    public void Numbers_do_not_depend_on_the_culture()
    {
        var before = Thread.CurrentThread.CurrentCulture;
        try
        {
            var commas = (System.Globalization.CultureInfo)System.Globalization.CultureInfo.InvariantCulture.Clone();
            commas.NumberFormat.NumberDecimalSeparator = ",";
            commas.NumberFormat.NegativeSign = "~";
            Thread.CurrentThread.CurrentCulture = commas;
            Assert.Equal("\u22121.5", NumberText.AtMost(-1.5, 1));
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }
}
