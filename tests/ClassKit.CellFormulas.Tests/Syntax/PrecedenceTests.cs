using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Syntax;

/// <summary>How tightly operators bind: ECMA-376 Part 1, 18.17.2.2; OpenFormula 1.3, 5.5 table 1.</summary>
public class PrecedenceTests
{
    [Theory]
    [InlineData("=2+3*4", "14")] // OpenFormula 1.3, 5.5: both forms are its own examples
    [InlineData("=(2+3)*4", "20")]
    [InlineData("=-2^2", "4")] // prefix minus before ^
    [InlineData("=2^3^2", "64")] // ^ groups to the left
    [InlineData("=2^-1", "0.5")]
    [InlineData("=-5%", "-0.05")]
    [InlineData("=50%^2", "0.25")] // percent before ^
    [InlineData("=200%%", "0.02")]
    [InlineData("=10-4-3", "3")]
    [InlineData("=100/10/2", "5")]
    [InlineData("=1+2&3+4", "\"37\"")] // + before &
    [InlineData("=1&2=\"12\"", "TRUE")] // & before =
    [InlineData("=1<2=TRUE", "TRUE")]
    [InlineData("=2<=2", "TRUE")]
    [InlineData("=2>=2", "TRUE")]
    [InlineData("=2<2", "FALSE")]
    [InlineData("=2<>2", "FALSE")]
    [InlineData("=--3", "3")]
    [InlineData("=+-+3", "-3")]
    public void Operators_bind_as_the_standards_say(string formula, string value) => Check.Gives(value, formula);
}
