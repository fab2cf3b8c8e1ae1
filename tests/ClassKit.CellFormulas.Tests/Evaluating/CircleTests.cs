using System.Globalization;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>Long ways and circles: what they come to must not depend on where one starts, nor on how long they are.</summary>
public class CircleTests
{
    private static string Cell(int row) => string.Create(CultureInfo.InvariantCulture, $"A{row}");

    /// <summary>Cells in a column, each the one above and one more; the first leads to the last.</summary>
    private static Book Circle(int length)
    {
        var book = new Book { [Cell(1)] = $"={Cell(length)}" };
        for (var row = 2; row <= length; row++)
            book[Cell(row)] = $"={Cell(row - 1)}+1";
        return book;
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(99)]
    [InlineData(100)]
    [InlineData(101)]
    [InlineData(250)]
    public void Every_cell_of_a_circle_of_any_length_says_so(int length)
    {
        foreach (var row in new[] { 1, (length + 1) / 2, length })
        {
            var evaluation = Circle(length).Evaluate(Cell(row));
            Assert.Equal(CellError.Reference, evaluation.Value.Error);
            Assert.IsType<Obstacle.Circle>(evaluation.Reason);
        }
    }

    [Fact]
    public void Up_to_twelve_cells_of_a_circle_are_named_and_of_more_the_first_twelve()
    {
        static Obstacle.Circle Named(int length) => Assert.IsType<Obstacle.Circle>(Circle(length).Evaluate(Cell(1)).Reason);

        Assert.Equal((12, 12), (Named(12).Cells.Count, Named(12).Length));
        Assert.Equal((12, 13), (Named(13).Cells.Count, Named(13).Length));
    }

    [Theory]
    [InlineData(99)]
    [InlineData(100)]
    [InlineData(101)]
    [InlineData(202)]
    [InlineData(650)]
    public void A_chain_of_any_length_has_the_value_of_its_end(int length)
    {
        var book = Circle(length);
        book[Cell(1)] = "1";

        Assert.Equal(length, book.Value(Cell(length)).Number);
        Assert.Equal(length - 1, book.Evaluate(Cell(length)).Dependencies.Count);
        Assert.DoesNotContain(Book.At(Cell(length)), book.Evaluate(Cell(length)).Dependencies);
    }

    [Fact]
    public void Who_reads_a_circle_is_not_in_it_and_those_who_share_a_cell_with_it_are()
    {
        // A1 and B1 are one circle, B1 and C1 another; D1 looks on, E1 does not mind.
        var book = new Book
        {
            ["A1"] = "=B1+1",
            ["B1"] = "=A1+C1",
            ["C1"] = "=IFERROR(B1,1)",
            ["D1"] = "=C1",
            ["E1"] = "=IFERROR(C1,4)",
            ["F1"] = "=E1*2",
        };

        foreach (var cell in new[] { "A1", "B1", "C1", "D1" })
            Assert.Equal(CellError.Reference, book.Value(cell).Error);
        Assert.Equal(4, book.Value("E1").Number);
        Assert.Equal(8, book.Value("F1").Number);
    }

    /// <summary>
    /// Random books of formulas that lead to each other: asked for alone or after all others, in any order, a cell comes out the same.
    /// </summary>
    [Fact]
    public void The_order_of_asking_changes_nothing()
    {
        var random = new Random(20_261_126);
        for (var round = 0; round < 200; round++)
        {
            var book = new Book();
            for (var row = 1; row <= 8; row++)
            {
                string Other() => Cell(random.Next(1, 11));
                var from = random.Next(1, 11);
                book[Cell(row)] = random.Next(5) switch
                {
                    4 => $"=IFERROR(SUMPRODUCT({Cell(from)}:{Cell(from + 59)}),{row})",
                    0 => $"={Other()}+{Other()}",
                    1 => $"=IFERROR({Other()},{row})",
                    2 => $"=SUM({Other()}:{Other()})",
                    _ => "1",
                };
            }

            var cells = Enumerable.Range(1, 8).Select(row => Book.At(Cell(row))).ToList();
            var alone = cells.ConvertAll(cell =>
                new WorkbookEvaluator(book.Snapshot()).Evaluate(cell, cancellation: TestContext.Current.CancellationToken).Value
            );
            foreach (var order in new[] { cells, [.. cells.AsEnumerable().Reverse()], [.. cells.OrderBy(_ => random.Next())] })
            {
                var together = new WorkbookEvaluator(book.Snapshot()).EvaluateAll(
                    order,
                    cancellation: TestContext.Current.CancellationToken
                );
                foreach (var (cell, evaluation) in order.Zip(together))
                    Assert.Equal(alone[cells.IndexOf(cell)], evaluation.Value);
            }
        }
    }
}
