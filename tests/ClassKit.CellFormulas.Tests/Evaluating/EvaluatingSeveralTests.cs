using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

public class EvaluatingSeveralTests
{
    private static readonly string[] Cells = ["A1", "B1", "C1", "D1", "E1", "F1", "A1", "Nowhere!A1"];

    [Fact]
    public void Several_cells_at_once_come_out_as_one_by_one()
    {
        var book = new Book
        {
            ["A1"] = "5",
            ["B1"] = "=A1*2",
            ["C1"] = "=B1+unknown",
            ["D1"] = "=C1&B1",
            ["E1"] = "=F1+B1",
            ["F1"] = "=E1",
            ["G1"] = "=SUM(A1:B1)",
        };
        var evaluator = new WorkbookEvaluator(book.Snapshot());
        var replaced = new Dictionary<CellAddress, CellValue> { [Book.At("A1")] = CellValue.FromNumber(7) };
        var together = evaluator.EvaluateAll([.. Cells.Select(Book.At)], replaced, TestContext.Current.CancellationToken);
        foreach (var (cell, evaluation) in Cells.Zip(together))
        {
            var alone = new WorkbookEvaluator(book.Snapshot()).Evaluate(Book.At(cell), replaced, TestContext.Current.CancellationToken);
            Assert.Equal((alone.Status, alone.Value), (evaluation.Status, evaluation.Value));
            Assert.Equal(alone.Reason is null, evaluation.Reason is null);
            Assert.Equal(alone.Dependencies, evaluation.Dependencies);
        }
    }

    [Fact]
    public void An_evaluator_used_again_remembers_nothing_of_other_inputs()
    {
        var evaluator = new WorkbookEvaluator(
            new Book
            {
                ["A1"] = "5",
                ["B1"] = "=A1*2",
                ["C1"] = "=1/0",
                ["D1"] = "=NOW()",
            }.Snapshot()
        );
        foreach (var input in new[] { 1.0, 2, 3 })
        {
            var replaced = new Dictionary<CellAddress, CellValue> { [Book.At("A1")] = CellValue.FromNumber(input) };
            Assert.Equal(
                EvaluationStatus.Volatile,
                evaluator.Evaluate(Book.At("D1"), replaced, TestContext.Current.CancellationToken).Status
            );
            Assert.Equal(input * 2, evaluator.Evaluate(Book.At("B1"), replaced, TestContext.Current.CancellationToken).Value.Number);
            Assert.Null(evaluator.Evaluate(Book.At("C1"), replaced, TestContext.Current.CancellationToken).Reason);
        }
    }
}
