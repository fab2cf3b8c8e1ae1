using ClassKit.CellFormulas.Formulas;

namespace ClassKit.CellFormulas.Tests.Syntax;

public class FormulaParsesTests
{
    [Theory]
    [InlineData("C7*(1-C8)")]
    [InlineData("=C7*(1-C8)")]
    [InlineData("=C7*(")]
    public void A_text_is_parsed_once_and_to_what_it_is(string text)
    {
        var parses = new FormulaParses();

        var first = parses.Of(text);

        Assert.Equal(
            (CellFormula.Parse(text).Formula?.ToString(), CellFormula.Parse(text).Error?.ToString()),
            (first.Formula?.ToString(), first.Error?.ToString())
        );
        Assert.Equal(first, parses.Of(text));
    }

    [Fact]
    public void Thousands_that_differ_are_parsed_and_not_all_kept()
    {
        var parses = new FormulaParses();

        for (var at = 0; at < 5000; at++)
            Assert.Equal($"=C7*{at}", parses.Of($"C7*{at}").Formula?.Text);

        Assert.Same(parses.Of("C7*0").Formula, parses.Of("C7*0").Formula);
        Assert.NotSame(parses.Of("C7*4999").Formula, parses.Of("C7*4999").Formula);
    }
}
