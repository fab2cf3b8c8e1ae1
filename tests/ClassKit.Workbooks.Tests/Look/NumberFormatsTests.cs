using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Workbooks.Look;

namespace ClassKit.Workbooks.Tests.Look;

public sealed class NumberFormatsTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(780, "0")]
    [InlineData(-3, "0")]
    [InlineData(6204.5454, "0.0")]
    [InlineData(123456.7, "0.0")]
    [InlineData(23.17668, "0.000")]
    [InlineData(0.818, "0.000")]
    [InlineData(2.9999999, "0")]
    [InlineData(0.0026273, "0.0000000")]
    public void A_number_in_a_list_shows_five_digits(double number, string format)
    {
        Assert.Equal(format, NumberFormats.Readable(number));
    }

    [Theory]
    [InlineData("g", 0.5, false, "0.0")]
    [InlineData("g", 1, false, "0")]
    [InlineData("g", 25, false, "0")]
    [InlineData("g", 0.05, false, "0.00")]
    [InlineData("%", 0.005, false, "0.0 %")]
    [InlineData("%", 0.01, false, "0 %")]
    [InlineData("%", 0.01, true, "0.0 %")]
    [InlineData("g", 0.01, true, null)]
    [InlineData("g", 0, false, null)]
    public void An_answer_shows_the_decimals_that_its_tolerance_can_tell(string unit, double tolerance, bool isRelative, string? format)
    {
        var part = new Part("p", "", CellFormula.Of("=1"), unit, new Tolerance(tolerance, isRelative), 1, true, []);

        Assert.Equal(format, NumberFormats.Of(part));
    }
}
