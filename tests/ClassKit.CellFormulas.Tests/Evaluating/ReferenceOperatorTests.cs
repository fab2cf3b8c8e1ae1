using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>
/// Where references meet: range, intersection, union, spill, and the one cell beside a formula. OpenFormula 1.3, 6.4.11 to 6.4.13 and
/// 6.3.3.
/// </summary>
public class ReferenceOperatorTests
{
    private static readonly Book Grid = new()
    {
        ["A1"] = "1",
        ["B1"] = "2",
        ["C1"] = "4",
        ["A2"] = "8",
        ["B2"] = "16",
        ["C2"] = "32",
        ["A3"] = "64",
        ["B3"] = "128",
        ["C3"] = "256",
        ["Other!A1"] = "512",
    };

    private static CellValue Value(string formula, string at = "H9")
    {
        Grid[at] = formula;
        return Grid.Value(at);
    }

    [Theory]
    [InlineData("=SUM(A1:B2 B1:C3)", 18)]
    [InlineData("=SUM(A1:B2 B1:C3 B2:B3)", 16)]
    [InlineData("=SUM((A1:A3,C1:C3) A2:C2)", 40)]
    [InlineData("=SUM((A1,A1,B2))", 18)]
    [InlineData("=SUM(A1:INDEX(B1:B3,2))", 27)]
    [InlineData("=SUM(B2:A1:C3)", 511)]
    public void References_combine_to_the_cells_they_share_or_span(string formula, double sum) =>
        Assert.Equal(CellValue.FromNumber(sum), Value(formula));

    [Theory]
    [InlineData("=SUM(A1:A2 B1:B2)", CellError.Null)] // no cell in common
    [InlineData("=A1:A2 C1:C2", CellError.Null)]
    [InlineData("=SUM((A1,B1):C1)", CellError.Value)]
    [InlineData("=SUM(A1:(B1,C1))", CellError.Value)]
    [InlineData("=SUM(A1:INDEX(Other!A1:A2,1))", CellError.Value)] // on another sheet
    [InlineData("=(A1,B1)+1", CellError.Value)] // two cells where one value is wanted
    [InlineData("=SUM(NA() A1)", CellError.NotAvailable)]
    [InlineData("=SUM(A1:IF(TRUE,NA()))", CellError.NotAvailable)]
    [InlineData("=IF(TRUE,NA())#", CellError.NotAvailable)]
    [InlineData("=LEFT(\"a\")#", CellError.Reference)]
    [InlineData("=SUM((A1:A2)#)", CellError.Reference)]
    public void What_does_not_combine_is_an_error_value(string formula, CellError error) =>
        Assert.Equal(CellValue.FromError(error), Value(formula));

    [Theory]
    [InlineData("=A2:A3+0", "E1", null)]
    [InlineData("=A2:A3+0", "E2", 8.0)]
    [InlineData("=A2:A3+0", "E3", 64.0)]
    [InlineData("=A2:A3+0", "E4", null)]
    [InlineData("=B1:C1+0", "A9", null)]
    [InlineData("=B1:C1+0", "B9", 2.0)]
    [InlineData("=B1:C1+0", "C9", 4.0)]
    [InlineData("=B1:C1+0", "D9", null)]
    [InlineData("=A1:B3+0", "E2", null)] // neither a row nor a column
    [InlineData("=A1:B3+0", "B9", null)]
    [InlineData("=@A2:A3", "E2", 8.0)]
    public void Of_a_row_or_a_column_the_cell_beside_the_formula_counts(string formula, string at, double? value) =>
        Assert.Equal(value is { } number ? CellValue.FromNumber(number) : CellValue.FromError(CellError.Value), Value(formula, at));

    [Fact]
    public void A_union_of_a_thousand_areas_is_read_and_no_larger_one()
    {
        static string Of(int areas) => $"=COUNT(({string.Join(',', Enumerable.Repeat("A1", areas))}))";

        Assert.Equal(CellValue.FromNumber(1000), Value(Of(1000)));
        Grid["H9"] = Of(1001);
        Assert.Equal(new Obstacle.TooManyAreas(1000), Grid.Evaluate("H9").Reason);
    }

    [Theory]
    [InlineData("Sheet1!B:B", "=SUM(there)", "C9", 292)] // a column to the right of one's own, here D; whole columns stay whole
    [InlineData("Sheet1!A$1", "=there", "B9", 2)] // the row is fixed, the column is one's own
    [InlineData("Sheet1!$A1", "=there", "F3", 64)] // the column is fixed, the row is one's own
    public void A_relative_name_moves_only_what_is_not_fixed(string refersTo, string formula, string at, double value)
    {
        var book = new Book
        {
            ["A1"] = "1",
            ["B1"] = "2",
            ["D4"] = "36",
            ["D5"] = "256",
            ["A3"] = "64",
            [at] = formula,
        }.Name("there", refersTo);

        Assert.Equal(value, book.Value(at).Number);
    }
}
