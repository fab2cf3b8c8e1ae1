using ClassKit.CellFormulas.Formulas;

namespace ClassKit.CellFormulas.Tests.Syntax;

public class ReplacingNamesTests
{
    [Theory]
    [InlineData("=flour*hydration", "flour=B5 hydration=B6", "=B5*B6")]
    [InlineData("=flour*hydration", "flour='Sheet one'!B5", "='Sheet one'!B5*hydration")]
    [InlineData("=flour*hydration+salt", "flour=640 hydration=0.7 salt=12", "=640*0.7+12")]
    [InlineData("=a-b", "b=-3", "=a-(-3)")]
    [InlineData("=a^2", "a=-3", "=(-3)^2")]
    [InlineData("=a*2", "a=x+1", "=(x+1)*2")]
    [InlineData("=ABS(a)", "a=-3", "=ABS(-3)")]
    [InlineData("=(a)", "a=x+1", "=(x+1)")]
    [InlineData("=a", "a=x+1", "=x+1")]
    [InlineData("=a%", "a=65%", "=(65%)%")]
    [InlineData("=a*b", "a=(x+1)", "=(x+1)*b")]
    [InlineData("=A+a", "a=1", "=A+1")] // the caller decides about letter case
    [InlineData("=LET(a,b,a+c)", "a=1 b=2 c=3", "=LET(a,2,a+3)")]
    public void Operands_take_the_places_of_names(string formula, string operands, string result)
    {
        var byName = operands
            .Split(' ')
            .Aggregate(new List<string>(), (list, word) =>
            {
                if (word.Contains('=', StringComparison.Ordinal))
                    list.Add(word);
                else
                    list[^1] += " " + word;
                return list;
            })
            .ToDictionary(
                pair => pair[..pair.IndexOf('=', StringComparison.Ordinal)],
                pair => pair[(pair.IndexOf('=', StringComparison.Ordinal) + 1)..]
            );
        Assert.Equal(result, CellFormula.Of(formula).ReplaceNames(name => byName.GetValueOrDefault(name)).ToString());
    }

    [Fact]
    public void Shifting_moves_only_what_has_no_dollar_sign()
    {
        var formula = CellFormula.Of("=A1+$A1+A$1+$A$1+B:B+$3:4+Sheet2!C5+name");
        Assert.Equal("=C2+$A2+C$1+$A$1+D:D+$3:5+Sheet2!E6+name", formula.Shift(1, 2).ToString());
    }

    [Fact]
    public void A_reference_shifted_off_the_sheet_is_lost() => Assert.Equal("=#REF!+B1", CellFormula.Of("=A1+C2").Shift(-1, -1).ToString());
}
