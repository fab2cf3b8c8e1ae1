namespace ClassKit.CellFormulas.Tests;

/// <summary>References to tables by the names of their columns: ECMA-376 Part 1, 18.17.6.2.</summary>
public class TableTests
{
    [Theory]
    [InlineData("SUM(Doughs[Flour])", "1500")]
    [InlineData("sum(doughs[flour])", "1500")]
    [InlineData("SUM(Doughs[[Flour]:[Water]])", "2550")]
    [InlineData("SUM(Doughs[])", "2550")]
    [InlineData("SUM(Doughs)", "2550")]
    [InlineData("COUNTA(Doughs[#All])", "15")]
    [InlineData("COUNTA(Doughs[[#All],[Name]])", "5")]
    [InlineData("Doughs[[#Totals],[Flour]]", "1500")]
    [InlineData("INDEX(Doughs[#Headers],1,3)", "\"Water\"")]
    [InlineData("COUNTA(Doughs[[#Headers],[#Data],[Flour]])", "4")]
    [InlineData("COUNTA(Doughs[[#Data],[#Totals],[Flour]])", "4")]
    [InlineData("ROWS(Doughs[#Data])", "3")]
    [InlineData("VLOOKUP(\"rye\",Doughs[#All],3,FALSE)", "400")]
    [InlineData("Doughs[Salt]", "#REF!")]
    public void A_formula_outside_the_table_names_table_and_column(string formula, string value) => Assert.Equal(value, Literal.Write(Evaluate("F9", formula).Value));

    [Theory]
    [InlineData("Doughs[[#This Row],[Water]]/Doughs[[#This Row],[Flour]]", "0.8")]
    [InlineData("Doughs[@Water]/Doughs[@Flour]", "0.8")]
    [InlineData("[@Water]/[@Flour]", "0.8")]
    [InlineData("[@[Water]]*2", "800")]
    [InlineData("SUM([Flour])", "1500")]
    [InlineData("SUM(Doughs[@[Flour]:[Water]])", "900")]
    public void A_formula_in_a_row_of_the_table_means_that_row(string formula, string value) => Assert.Equal(value, Literal.Write(Evaluate("C3", formula).Value));

    [Fact]
    public void This_row_outside_the_tables_rows_is_no_value() => Assert.Equal(CellError.Value, Evaluate("F9", "Doughs[@Flour]").Value.Error);

    [Fact]
    public void A_sign_in_a_columns_name_stands_after_an_apostrophe()
    {
        var book = Workbook(new Dictionary<(int Row, int Column), CellContent> { [(1, 1)] = new(CellValue.FromText("g [#1]")), [(2, 1)] = new(CellValue.FromNumber(7)), [(5, 5)] = new(CellValue.Blank, "SUM(T[g '['#1']])") });
        book = book with { Tables = [new("T", "Sheet1", 1, 1, 2, true, false, ["g [#1]"])] };
        Assert.Equal(7, new WorkbookEvaluator(book).Evaluate(Book.At("E5")).Value.Number);
    }

    [Fact]
    public void A_table_that_is_not_there_is_unsupported() => Assert.Equal(EvaluationStatus.Unsupported, Evaluate("F9", "SUM(Breads[Flour])").Status);

    private static Evaluation Evaluate(string cell, string formula)
    {
        string[][] rows = [["Name", "Flour", "Water"], ["wheat", "500", "350"], ["rye", "500", "400"], ["spelt", "500", "300"], ["Total", "1500", "1050"]];
        var cells = new Dictionary<(int Row, int Column), CellContent>();
        for (var row = 0; row < rows.Length; row++)
        {
            for (var column = 0; column < rows[row].Length; column++) cells[(row + 1, column + 1)] = new(Literal.Read(rows[row][column]));
        }

        // The cell asked for may lie in the table, in a column of its own.
        var at = Book.At(cell);
        var place = (at.Row, Column: cell == "C3" ? 4 : at.Column);
        cells[place] = new(CellValue.Blank, formula);
        IReadOnlyList<string> columns = cell == "C3" ? ["Name", "Flour", "Water", "Result"] : ["Name", "Flour", "Water"];
        var book = Workbook(cells) with { Tables = [new("Doughs", "Sheet1", 1, 1, 5, HasHeaders: true, HasTotals: true, columns)] };
        return new WorkbookEvaluator(book).Evaluate(at with { Column = place.Column }, cancellation: TestContext.Current.CancellationToken);
    }

    private static WorkbookSnapshot Workbook(Dictionary<(int Row, int Column), CellContent> cells) => new([new("Sheet1", cells)], []);
}
