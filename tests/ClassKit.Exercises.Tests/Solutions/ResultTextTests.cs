using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Tests.Solutions;

public sealed class ResultTextTests
{
    private static Part Asking(string unit, Tolerance tolerance) => new("p", "?", CellFormula.Of("=1"), unit, tolerance, 1, true, []);

    [Fact]
    public void A_fraction_in_a_percent_cell_is_shown_as_percent() =>
        Assert.Equal("65\u00A0%", ResultText.Of(Asking("%", Tolerance.Absolute(0.005)), 0.65));

    [Theory]
    [InlineData(724.5, 0.5, "724.5\u00A0g")]
    [InlineData(724.46, 0.5, "724.5\u00A0g")]
    [InlineData(724.0, 0.5, "724\u00A0g")]
    [InlineData(1.2345, 0.5, "1.23\u00A0g")]
    [InlineData(-3.25, 0.5, "\u22123.25\u00A0g")]
    [InlineData(0, 0.5, "0\u00A0g")]
    public void An_answer_has_the_places_that_its_tolerance_gives_meaning_to(double value, double tolerance, string text) =>
        Assert.Equal(text, ResultText.Of(Asking("g", Tolerance.Absolute(tolerance)), value));

    [Theory]
    [InlineData(2.5, "2.50\u00A0dollars")]
    [InlineData(13.509, "13.51\u00A0dollars")]
    [InlineData(0.4375, "0.438\u00A0dollars")]
    public void Money_has_its_cents(double value, string text) =>
        Assert.Equal(text, ResultText.Of(Asking("dollars", Tolerance.Absolute(0.02)), value));

    [Theory]
    [InlineData("CHF")]
    [InlineData("USD")]
    [InlineData("Euros")]
    [InlineData("€")]
    [InlineData("pounds sterling")]
    public void Money_has_them_whatever_it_is_called(string unit) =>
        Assert.Equal("2.50\u00A0" + unit, ResultText.Of(Asking(unit, Tolerance.Absolute(0.02)), 2.5));

    /// <summary>The flour of 73 pieces of 390 g at 170 %: a college worksheet on baker's percentage, 16 747.06 g.</summary>
    [Fact]
    public void A_relative_tolerance_counts_places_at_the_size_of_the_answer() =>
        Assert.Equal("16747\u00A0g", ResultText.Of(Asking("g", Tolerance.Relative(0.0001)), 73 * 390 / 1.70));

    /// <summary>OpenFormula 1.3 Part 4, 6.17.5 (ROUND): halves go away from zero.</summary>
    [Fact]
    public void Halves_go_away_from_zero() => Assert.Equal("23.95", ResultText.Number(Asking("", Tolerance.Absolute(0.01)), 23.945));

    [Fact]
    public void A_value_beyond_all_sense_is_still_printed() =>
        Assert.Equal("1E+200\u00A0g", ResultText.Of(Asking("g", Tolerance.Absolute(0.5)), 1e200));
}
