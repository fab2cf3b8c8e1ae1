using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>Rules quoted from OpenFormula (OASIS ODF 1.3 Part 4), each with its section and function.</summary>
public class StandardRulesTests
{
    [Theory]
    [InlineData("=ROUND(2.5,0)", "3")] // 6.17 ROUND: halves away from zero
    [InlineData("=ROUND(-2.5,0)", "-3")]
    [InlineData("=ROUND(2.675,2)", "2.68")] // a half in decimal, though its nearest double lies below
    [InlineData("=ROUND(1250,-2)", "1300")]
    [InlineData("=INT(-3.5)", "-4")] // 6.17 INT: towards minus infinity
    [InlineData("=TRUNC(-3.5)", "-3")] // 6.17 TRUNC: towards 0
    [InlineData("=MOD(-3,2)", "1")] // 6.16 MOD: the divisor's sign
    [InlineData("=MOD(3,-2)", "-1")]
    [InlineData("=MROUND(7.5,5)", "10")] // 6.17 MROUND: a tie to the greater
    [InlineData("=QUOTIENT(-7,2)", "-3")] // 6.16 QUOTIENT: towards 0
    [InlineData("=CEILING(21,10)", "30")]
    [InlineData("=ROUNDUP(-1.1,0)", "-2")] // 6.17 ROUNDUP: away from 0
    [InlineData("=ROUNDDOWN(-1.9,0)", "-1")] // 6.17 ROUNDDOWN: towards 0
    public void Rounding_follows_the_standard(string formula, string value) => Check.Gives(value, formula);
}
