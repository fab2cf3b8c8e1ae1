using System.Globalization;
using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>What was worked out once is not worked out again, told by the steps that it takes.</summary>
public class WorkSavedTests
{
    private static long Needed(int formulas, Func<int, string> formula)
    {
        var book = new Book();
        for (var row = 1; row <= 2000; row++)
        {
            book[string.Create(CultureInfo.InvariantCulture, $"A{row}")] = "1";
            book[string.Create(CultureInfo.InvariantCulture, $"B{row}")] = "2";
        }

        for (var row = 1; row <= formulas; row++)
            book[string.Create(CultureInfo.InvariantCulture, $"D{row}")] = formula(row);
        var cells = Enumerable.Range(1, formulas).Select(row => new CellAddress("Sheet1", row, 4)).ToList();
        var snapshot = book.Snapshot();
        bool IsEnough(long steps) =>
            new WorkbookEvaluator(snapshot, new EvaluationLimits(AllSteps: steps))
                .EvaluateAll(cells, cancellation: TestContext.Current.CancellationToken)[^1]
                .Status == EvaluationStatus.Computed;
        var (least, most) = (0L, 1L << 24);
        while (most - least > 1)
        {
            var middle = (least + most) / 2;
            if (IsEnough(middle))
                most = middle;
            else
                least = middle;
        }

        return most;
    }

    [Fact]
    public void A_large_area_is_read_once_for_all_who_look_something_up_in_it()
    {
        static string Formula(int row) => row % 2 == 1 ? "=SUMPRODUCT(A1:A2000)" : "=SUMPRODUCT(B1:B2000)";

        Assert.InRange(Needed(40, Formula), 1, 3 * Needed(2, Formula));
    }

    [Fact]
    public void A_small_area_is_not_worth_remembering()
    {
        static string Formula(int row) => "=SUMPRODUCT(A1:A40)";

        Assert.InRange(Needed(40, Formula), 20 * (Needed(2, Formula) - Needed(1, Formula)), 80 * Needed(1, Formula));
    }

    [Fact]
    public void A_long_text_of_a_formula_is_work_that_counts() =>
        Assert.InRange(Needed(1, _ => "=1" + new string(' ', 3_200)) - Needed(1, _ => "=1"), 100, 110);
}
