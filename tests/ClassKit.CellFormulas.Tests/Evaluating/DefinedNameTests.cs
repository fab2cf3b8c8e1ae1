using System.Globalization;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>Defined names that stand for formulas and for other names: ECMA-376 Part 1, 18.2.5.</summary>
public class DefinedNameTests
{
    private static Book Levels(int levels)
    {
        var book = new Book().Name("level_0", "1");
        for (var level = 1; level <= levels; level++)
            book.Name($"level_{level}", string.Create(CultureInfo.InvariantCulture, $"level_{level - 1}+1"));
        return book;
    }

    [Fact]
    public void Fifty_names_may_stand_within_each_other()
    {
        var book = Levels(60);
        book["A1"] = "=level_49";
        book["A2"] = "=level_50";

        Assert.Equal(50, book.Value("A1").Number);
        Assert.Equal(CellError.Reference, book.Value("A2").Error);
    }

    [Fact]
    public void A_name_may_be_used_over_and_over()
    {
        var book = new Book { ["A1"] = "=" + string.Join('+', Enumerable.Repeat("twice", 120)), ["A2"] = "=twice+A1+twice" }.Name(
            "twice",
            "1+1"
        );

        Assert.Equal(240, book.Value("A1").Number);
        Assert.Equal(244, book.Value("A2").Number);
    }

    [Fact]
    public void A_name_within_a_name_is_seen_from_the_sheet_that_asks()
    {
        var book = new Book { ["A1"] = "=outer", ["Other!A1"] = "=outer" }
            .Name("inner", "1")
            .Name("inner", "2", "Other")
            .Name("outer", "inner*10");
        var evaluator = new WorkbookEvaluator(book.Snapshot());

        foreach (var round in new[] { 1, 2 })
        {
            Assert.Equal(
                (round, 10),
                (round, evaluator.Evaluate(Book.At("A1"), cancellation: TestContext.Current.CancellationToken).Value.Number)
            );
            Assert.Equal(
                (round, 20),
                (round, evaluator.Evaluate(Book.At("Other!A1"), cancellation: TestContext.Current.CancellationToken).Value.Number)
            );
        }
    }

    [Fact]
    public void A_relative_name_within_a_name_is_seen_from_the_cell_that_asks()
    {
        // `above` is the cell above, `double_above` twice that.
        var book = new Book
        {
            ["A1"] = "5",
            ["B1"] = "7",
            ["A2"] = "=double_above+above",
            ["B2"] = "=double_above",
        }
            .Name("above", "Sheet1!A1048576")
            .Name("double_above", "above*2");

        Assert.Equal(15, book.Value("A2").Number);
        Assert.Equal(14, book.Value("B2").Number);
    }

    [Fact]
    public void The_formula_of_a_name_works_element_by_element()
    {
        var book = new Book
        {
            ["A1"] = "5",
            ["A2"] = "7",
            ["C9"] = "=total",
        }.Name("total", "SUM(Sheet1!$A$1:$A$2*2)");

        Assert.Equal(24, book.Value("C9").Number);
    }

    [Fact]
    public void A_name_whose_formula_cannot_be_read_is_unsupported()
    {
        var evaluation = new Book { ["A1"] = "=rate*2" }
            .Name("rate", "1+")
            .Evaluate("A1");

        Assert.Equal(
            (EvaluationStatus.Unsupported, (Obstacle?)new Obstacle.NameWithoutFormula("rate")),
            (evaluation.Status, evaluation.Reason)
        );
    }

    [Fact]
    public void The_reason_of_an_error_that_was_caught_is_not_told()
    {
        Assert.Null(
            new Book { ["A1"] = "=IFERROR(flower,1)" }
                .Evaluate("A1")
                .Reason
        );
        Assert.NotNull(
            new Book { ["A1"] = "=IFERROR(flower,1)+water" }
                .Evaluate("A1")
                .Reason
        );
    }

    [Fact]
    public void A_replaced_cell_has_no_formula()
    {
        var book = new Book { ["A1"] = "=1+1", ["B1"] = "=ISFORMULA(A1)" };

        Assert.Equal(CellValue.FromLogical(true), book.Value("B1"));
        Assert.Equal(CellValue.FromLogical(false), book.Evaluate("B1", ("A1", CellValue.FromNumber(2))).Value);
    }

    [Theory]
    [InlineData(1, true)] // hidden by hand, above the filter
    [InlineData(2, false)]
    [InlineData(4, false)]
    [InlineData(5, true)]
    public void Only_rows_within_the_filter_are_hidden_by_it(int hidden, bool isCounted)
    {
        var book = new Book
        {
            ["A1"] = "1",
            ["A2"] = "2",
            ["A3"] = "4",
            ["A4"] = "8",
            ["A5"] = "16",
            ["B9"] = "=SUBTOTAL(9,A1:A5)",
        }.Snapshot();
        var sheet = book.Sheets[0] with
        {
            HiddenRows = new HashSet<int> { hidden },
            FilteredRows = (2, 4),
        };
        var sum = new WorkbookEvaluator(book with { Sheets = [sheet] })
            .Evaluate(Book.At("B9"), cancellation: TestContext.Current.CancellationToken)
            .Value.Number;

        Assert.Equal(isCounted ? 31 : 31 - Math.Pow(2, hidden - 1), sum);
    }

    [Fact]
    public void An_area_on_an_empty_sheet_is_empty()
    {
        var book = new Book { ["A1"] = "=SUM(Other!A:A)+COUNT(Other!A1:B9)" };
        book.Put("Other!A1", new(CellValue.Blank));
        var emptied = book.Snapshot();
        emptied = emptied with { Sheets = [emptied.Sheets[0], new("Other", new Dictionary<(int, int), CellContent>())] };

        Assert.Equal(
            0,
            new WorkbookEvaluator(emptied).Evaluate(Book.At("A1"), cancellation: TestContext.Current.CancellationToken).Value.Number
        );
    }
}
