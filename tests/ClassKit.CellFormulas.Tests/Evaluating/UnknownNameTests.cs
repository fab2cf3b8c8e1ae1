using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>Names and functions that nobody knows, among the arguments of others.</summary>
/// <remarks>The expected values are those that LibreOffice 7.4 computes of an .xlsx file with these formulas.</remarks>
public class UnknownNameTests
{
    [Theory]
    [InlineData("=ROUND(1/0,foo)", "#DIV/0!")] // computed further left
    [InlineData("=SUM(1/0,foo)", "#DIV/0!")]
    [InlineData("=1/0+foo", "#DIV/0!")]
    [InlineData("=SUM(D1:D2,foo)", "#NAME?")] // errors in ranges come later
    [InlineData("=MATCH(1,foo,0)", "#NAME?")]
    [InlineData("=VLOOKUP(1,foo,2)", "#NAME?")]
    [InlineData("=ROUND(\"abc\",nosuch(1))", "#NAME?")] // and so do texts that are no numbers
    [InlineData("=COUNT(foo)", "0")]
    [InlineData("=COUNTA(foo)", "1")]
    [InlineData("=COUNT(nosuch(1))", "0")]
    [InlineData("=ISERROR(foo)", "TRUE")]
    [InlineData("=ISERROR(nosuch(1))", "TRUE")]
    [InlineData("=IF(TRUE,1,foo)", "1")]
    [InlineData("=IF(TRUE,1,nosuch(1))", "1")]
    [InlineData("=IFERROR(foo,1)", "1")]
    public void An_unknown_name_wins_over_what_is_found_later(string formula, string expected) => Gives(formula, expected);

    [Theory]
    [InlineData("=XLOOKUP(1,foo,foo,\"none\")", "#NAME?")] // newer than that LibreOffice: by the same rule
    [InlineData("=LET(foo,D3,MATCH(3,foo,0))", "1")]
    public void The_same_holds_for_newer_functions_and_for_names_bound_in_the_formula(string formula, string expected) =>
        Gives(formula, expected);

    [Theory]
    [InlineData("=_xll.LeavenRate(1)")]
    [InlineData("=COM.EXAMPLE.LEAVENRATE(A1)")]
    [InlineData("=SUM(Leaven.Rate(1),2)")]
    [InlineData("=IMPORTRANGE(\"a\",\"b\")")]
    public void The_functions_of_add_ins_are_not_evaluated(string formula)
    {
        var evaluation = Evaluate(formula);

        Assert.Equal(EvaluationStatus.Unsupported, evaluation.Status);
        Assert.IsType<Obstacle.UnknownFunction>(evaluation.Reason);
    }

    [Fact]
    public void A_misspelling_is_still_one() => Gives("=STDEV.Q(1,2)", "#NAME?");

    private static void Gives(string formula, string expected)
    {
        var evaluation = Evaluate(formula);
        Assert.Equal((EvaluationStatus.Computed, expected), (evaluation.Status, evaluation.Value.ToString()));
    }

    private static Evaluation Evaluate(string formula) =>
        new Book
        {
            ["D1"] = "=1/0",
            ["D3"] = "3",
            ["H1"] = formula,
        }.Evaluate("H1");
}
