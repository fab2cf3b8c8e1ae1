using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

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
    public void A_formula_outside_the_table_names_table_and_column(string formula, string value) =>
        Assert.Equal(value, Literal.Write(Evaluate("F9", formula).Value));

    [Theory]
    [InlineData("Doughs[[#This Row],[Water]]/Doughs[[#This Row],[Flour]]", "0.8")]
    [InlineData("Doughs[@Water]/Doughs[@Flour]", "0.8")]
    [InlineData("[@Water]/[@Flour]", "0.8")]
    [InlineData("[@[Water]]*2", "800")]
    [InlineData("SUM([Flour])", "1500")]
    [InlineData("SUM(Doughs[@[Flour]:[Water]])", "900")]
    public void A_formula_in_a_row_of_the_table_means_that_row(string formula, string value) =>
        Assert.Equal(value, Literal.Write(Evaluate("C3", formula).Value));

    [Fact]
    public void This_row_outside_the_tables_rows_is_no_value() =>
        Assert.Equal(CellError.Value, Evaluate("F9", "Doughs[@Flour]").Value.Error);

    [Fact]
    public void A_sign_in_a_columns_name_stands_after_an_apostrophe()
    {
        var book = Workbook(
            new Dictionary<(int Row, int Column), CellContent>
            {
                [(1, 1)] = new(CellValue.FromText("g [#1]")),
                [(2, 1)] = new(CellValue.FromNumber(7)),
                [(5, 5)] = new(CellValue.Blank, "SUM(T[g '['#1']])"),
            }
        );
        book = book with { Tables = [new("T", "Sheet1", 1, 1, 2, true, false, ["g [#1]"])] };
        Assert.Equal(7, new WorkbookEvaluator(book).Evaluate(Book.At("E5")).Value.Number);
    }

    [Theory]
    [InlineData(true, true, "SUM(Doughs[Flour])", "500")]
    [InlineData(false, true, "SUM(Doughs[Flour])", "600")]
    [InlineData(true, false, "SUM(Doughs[Flour])", "900")]
    [InlineData(false, false, "SUM(Doughs[Flour])", "1000")]
    [InlineData(false, false, "SUM(Doughs[#All])", "1010")]
    [InlineData(true, true, "SUM(Doughs[#All])", "1010")]
    [InlineData(true, false, "SUM(Doughs[#Headers])", "101")]
    [InlineData(false, true, "SUM(Doughs[#Headers])", "#REF!")]
    [InlineData(false, true, "SUM(Doughs[[#Headers],[Flour]])", "#REF!")]
    [InlineData(false, true, "SUM(Doughs[#Totals])", "404")]
    [InlineData(true, false, "SUM(Doughs[#Totals])", "#REF!")]
    [InlineData(false, false, "SUM(Doughs[[#Headers],[#Data],[Flour]])", "1000")]
    [InlineData(true, false, "SUM(Doughs[[#Headers],[#Data],[Flour]])", "1000")]
    [InlineData(true, true, "SUM(Doughs[[#Headers],[#Data],[Flour]])", "600")]
    [InlineData(true, false, "SUM(Doughs[[#Data],[#Totals],[Flour]])", "900")]
    [InlineData(true, true, "SUM(Doughs[[#Data],[#Totals],[Flour]])", "900")]
    [InlineData(false, false, "SUM(Doughs[[Water]:[Flour]])", "1010")]
    public void Which_rows_are_meant_depends_on_headers_and_totals(bool hasHeaders, bool hasTotals, string formula, string value) =>
        Assert.Equal(value, Literal.Write(Bare("F9", formula, hasHeaders, hasTotals).Value));

    [Theory]
    [InlineData("C1", "#VALUE!")] // the headers
    [InlineData("C2", "200")]
    [InlineData("C3", "300")]
    [InlineData("C4", "#VALUE!")] // the totals
    [InlineData("C5", "#VALUE!")]
    public void This_row_is_a_row_of_data(string cell, string value) =>
        Assert.Equal(value, Literal.Write(Bare(cell, "Doughs[@Flour]", hasHeaders: true, hasTotals: true).Value));

    [Theory]
    [InlineData("SUM(Doughs[[Flour]:[Salt]])")]
    [InlineData("SUM(Doughs[[Salt]:[Flour]])")]
    [InlineData("SUM(Doughs[Salt])")]
    public void A_column_that_is_not_there_is_named(string formula)
    {
        var evaluation = Bare("F9", formula, hasHeaders: true, hasTotals: true);
        Assert.Equal(
            (CellError.Reference, (Obstacle?)new Obstacle.NoColumn("Doughs", formula[4..^1])),
            (evaluation.Value.Error, evaluation.Reason)
        );
    }

    /// <summary>Four rows of two columns, 100, 200, 300, 400 and 1, 2, 3, 4, whatever of them is headers and totals.</summary>
    private static Evaluation Bare(string cell, string formula, bool hasHeaders, bool hasTotals)
    {
        var cells = new Dictionary<(int Row, int Column), CellContent>();
        for (var row = 1; row <= 4; row++)
        {
            cells[(row, 1)] = new(CellValue.FromNumber(100 * row));
            cells[(row, 2)] = new(CellValue.FromNumber(row));
        }

        var at = Book.At(cell);
        cells[(at.Row, at.Column)] = new(CellValue.Blank, formula);
        var book = Workbook(cells) with { Tables = [new("Doughs", "Sheet1", 1, 1, 4, hasHeaders, hasTotals, ["Flour", "Water"])] };
        return new WorkbookEvaluator(book).Evaluate(at, cancellation: TestContext.Current.CancellationToken);
    }

    [Fact]
    public void A_table_that_is_not_there_is_unsupported() =>
        Assert.Equal(EvaluationStatus.Unsupported, Evaluate("F9", "SUM(Breads[Flour])").Status);

    private static Evaluation Evaluate(string cell, string formula)
    {
        string[][] rows =
        [
            ["Name", "Flour", "Water"],
            ["wheat", "500", "350"],
            ["rye", "500", "400"],
            ["spelt", "500", "300"],
            ["Total", "1500", "1050"],
        ];
        var cells = new Dictionary<(int Row, int Column), CellContent>();
        for (var row = 0; row < rows.Length; row++)
        {
            for (var column = 0; column < rows[row].Length; column++)
                cells[(row + 1, column + 1)] = new(Literal.Read(rows[row][column]));
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
