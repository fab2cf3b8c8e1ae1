using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

public class NamedEvaluationTests
{
    private static readonly Dictionary<string, CellValue> Dough = new()
    {
        ["flour"] = CellValue.FromNumber(640),
        ["hydration"] = CellValue.FromNumber(0.7),
    };

    [Fact]
    public void Names_have_their_values_whatever_their_letter_case() =>
        Assert.Equal(448, NamedEvaluation.Evaluate(CellFormula.Of("=ROUND(Flour*HYDRATION,1)"), Dough).Value.Number);

    [Fact]
    public void An_unknown_name_is_an_error_value_with_a_reason()
    {
        var evaluation = NamedEvaluation.Evaluate(CellFormula.Of("=flour*water"), Dough);
        Assert.Equal(CellError.Name, evaluation.Value.Error);
        Assert.Equal(new Obstacle.NoName("water"), evaluation.Reason);
    }

    [Fact]
    public void There_are_no_cells()
    {
        Assert.Equal(CellError.Reference, NamedEvaluation.Evaluate(CellFormula.Of("=flour*B5"), Dough).Value.Error);
        Assert.Equal(CellError.Reference, NamedEvaluation.Evaluate(CellFormula.Of("=SUM(B5:B9)"), Dough).Value.Error);
    }

    [Theory]
    [InlineData("=LET(x,2,y,x+1,x*y)", "6")]
    [InlineData("=LET(x,2,LET(x,5,x)+x)", "7")]
    [InlineData("=LET(x,1/0,IFERROR(x,3))", "3")]
    public void LET_binds_names(string formula, string value) => Check.Gives(value, formula);

    [Theory]
    [InlineData("=1/0+#N/A", "#DIV/0!")]
    [InlineData("=#N/A+1/0", "#N/A")]
    [InlineData("=SUM(#N/A,1/0)", "#N/A")]
    [InlineData("=ROUND(#REF!,#NUM!)", "#REF!")]
    public void The_leftmost_error_wins(string formula, string value) => Check.Gives(value, formula);

    [Theory]
    [InlineData("=\"3\"+1", "4")]
    [InlineData("=\"3\"&1", "\"31\"")]
    [InlineData("=TRUE+1", "2")]
    [InlineData("=\"yeast\"+1", "#VALUE!")]
    [InlineData("=\"65%\"*2", "1.3")]
    [InlineData("=\"1,250\"+0", "1250")]
    [InlineData("=\"0,65\"+0", "#VALUE!")] // a decimal comma is not guessed at
    [InlineData("=SUM(\"3\",TRUE)", "4")]
    [InlineData("=SUM({\"3\",TRUE,2})", "2")] // in arrays and references only numbers count
    [InlineData("=1/3&\"\"", "\"0.333333333333333\"")]
    [InlineData("=1E21&\"\"", "\"1E+21\"")]
    [InlineData("=0.1+0.2-0.3", "0")]
    [InlineData("=0.1+0.2=0.3", "TRUE")]
    [InlineData("=\"a\"=\"A\"", "TRUE")]
    [InlineData("=\"1\"=1", "FALSE")]
    [InlineData("=\"1\">2", "TRUE")] // any text after any number
    [InlineData("=TRUE>\"z\"", "TRUE")]
    [InlineData("=0^0", "#NUM!")]
    [InlineData("=SUM({1,2,3}*2)", "12")]
    [InlineData("=SUM({1,2,3}*{1;10})", "66")]
    [InlineData("=SUM(ABS({-1,-2}))", "3")]
    [InlineData("=SUM(IF({1,0,1},{10,20,30},1))", "41")]
    public void Values_turn_into_what_is_wanted_of_them(string formula, string value) => Check.Gives(value, formula);
}
