using ClassKit.CellFormulas;
using ClassKit.Exercises;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Tests.Numbers;

public sealed class NumberTextTests
{
    private static Part Asking(string unit, Tolerance tolerance) => new("p", "?", SampleKey, unit, tolerance, 1, true, []);

    private static readonly CellFormula SampleKey = Samples.SampleExercises.Hydration.Parts[0].Key;

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
    public void A_fraction_in_a_percent_cell_is_shown_as_percent() =>
        Assert.Equal("65\u00A0%", NumberText.Answer(0.65, Asking("%", Tolerance.Absolute(0.005))));

    [Theory]
    [InlineData(724.5, 0.5, "724.5\u00A0g")]
    [InlineData(724.46, 0.5, "724.5\u00A0g")]
    [InlineData(724.0, 0.5, "724\u00A0g")]
    [InlineData(1.2345, 0.5, "1.23\u00A0g")]
    [InlineData(16747.0588, 0.01, "16\u202F747.06\u00A0g")]
    public void An_answer_has_the_places_that_its_tolerance_gives_meaning_to(double value, double tolerance, string text) =>
        Assert.Equal(text, NumberText.Answer(value, Asking("g", Tolerance.Absolute(tolerance))));

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
            Assert.Equal(Samples.SamplePages.All, Samples.SamplePages.Render());
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }
}
