using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>
/// Cells that an array formula in another cell fills (ECMA-376 Part 1, 18.3.1.40): read alone, within areas small and large, and by
/// <c>#</c>.
/// </summary>
public class ArrayRangeTests
{
    private static Book Filled(string formula = "A1:B3*2", string range = "C3:D5")
    {
        var book = new Book
        {
            ["A1"] = "5",
            ["A2"] = "7",
            ["A3"] = "9",
            ["B1"] = "10",
            ["B2"] = "20",
            ["B3"] = "30",
        };
        book.Put("C3", new(CellValue.Blank, formula, range));
        return book;
    }

    [Theory]
    [InlineData("C3", 10)]
    [InlineData("D3", 20)]
    [InlineData("C4", 14)]
    [InlineData("D4", 40)]
    [InlineData("C5", 18)]
    [InlineData("D5", 60)]
    public void Each_cell_of_the_range_has_its_own_element(string cell, double value) => Assert.Equal(value, Filled().Value(cell).Number);

    [Fact]
    public void An_array_formula_may_be_a_range_alone() => Assert.Equal(9, Filled("A1:A3", "C3:C5").Value("C5").Number);

    [Theory]
    [InlineData("C2")]
    [InlineData("B4")]
    [InlineData("E3")]
    [InlineData("C6")]
    public void A_cell_beside_the_range_is_blank(string cell) => Assert.True(Filled().Value(cell).IsBlank);

    [Fact]
    public void A_range_larger_than_the_array_has_no_value_there_and_a_single_row_is_repeated()
    {
        Assert.Equal(CellError.NotAvailable, Filled(range: "C3:D6").Value("C6").Error);
        Assert.Equal(20, Filled("A1:B1*2", "C3:D5").Value("D5").Number);
    }

    [Theory]
    [InlineData("=SUM(C3:D5)", 162)]
    [InlineData("=SUM(C4:C9)", 32)]
    [InlineData("=SUM(C:C)", 42)] // a whole column: the sheet's cells are looked through instead of its places
    [InlineData("=SUM(C1:D2000)", 162)]
    [InlineData("=COUNT(C1:F3000)", 6)]
    [InlineData("=SUM(C3#)", 162)]
    [InlineData("=ROWS(C3#)*10+COLUMNS(C3#)", 32)]
    [InlineData("=SUMPRODUCT(C3:D5*1)", 162)]
    [InlineData("=INDEX(C3:D5,2,2)", 40)]
    public void Areas_hold_the_elements_too(string formula, double value)
    {
        var book = Filled();
        book["H9"] = formula;
        Assert.Equal(value, book.Value("H9").Number);
    }

    [Fact]
    public void Of_a_whole_column_cells_come_in_reading_order_with_replaced_ones_among_them()
    {
        var book = Filled();
        book["H9"] = "=TEXTJOIN(\",\",TRUE,C1:D2000)";

        Assert.Equal("10,20,14,40,18,60", book.Value("H9").Text);
        Assert.Equal(
            "1,10,20,14,40,18,60,2",
            book.Evaluate("H9", ("C1", CellValue.FromNumber(1)), ("D1999", CellValue.FromNumber(2))).Value.Text
        );
        Assert.Equal("10,20,3,40,18,60", book.Evaluate("H9", ("C4", CellValue.FromNumber(3))).Value.Text);
    }

    [Fact]
    public void An_array_of_its_own_cell_alone_can_be_named_by_its_sign()
    {
        var book = new Book
        {
            ["A1"] = "5",
            ["B1"] = "=SUM(C3#)",
            ["B2"] = "=SUM(A1#)",
        };
        book.Put("C3", new(CellValue.Blank, "A1*2", "C3"));

        Assert.Equal(10, book.Value("B1").Number);
        Assert.Equal(CellError.Reference, book.Value("B2").Error);
    }

    [Fact]
    public void An_error_in_the_array_formula_is_that_of_every_element_with_its_reason()
    {
        var element = Filled("A1:B3*flower").Evaluate("D4");

        Assert.Equal(CellError.Name, element.Value.Error);
        Assert.Equal(new Obstacle.NoName("flower"), element.Reason);
    }

    [Fact]
    public void A_replaced_element_or_master_takes_its_place()
    {
        Assert.Equal(1, Filled().Evaluate("D4", ("D4", CellValue.FromNumber(1))).Value.Number);
        Assert.Equal(1, Filled().Evaluate("D4", ("C3", CellValue.FromNumber(1))).Value.Number);
    }

    [Fact]
    public void Elements_depend_on_what_their_formula_reads() =>
        Assert.Equal(
            ["A1", "A2", "A3", "B1", "B2", "B3", "C3"],
            Filled().Evaluate("D5").Dependencies.Select(cell => cell.Cell).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Looking_for_array_formulas_is_work_that_counts()
    {
        var book = new Book { ["A1"] = "=SUM(F1:F20)" };
        for (var row = 1; row <= 20; row++)
            book[$"F{row}"] = "1";
        for (var row = 1; row <= 50; row++)
            book.Put($"H{row}", new(CellValue.Blank, "1+1", $"H{row}:I{row}"));

        // Twenty cells that are no formulas, each looked for in fifty ranges.
        Assert.Equal(
            EvaluationStatus.Unsupported,
            new WorkbookEvaluator(book.Snapshot(), new EvaluationLimits(Steps: 500))
                .Evaluate(Book.At("A1"), cancellation: TestContext.Current.CancellationToken)
                .Status
        );
        Assert.Equal(
            EvaluationStatus.Computed,
            new WorkbookEvaluator(book.Snapshot(), new EvaluationLimits(Steps: 5000))
                .Evaluate(Book.At("A1"), cancellation: TestContext.Current.CancellationToken)
                .Status
        );
    }
}
