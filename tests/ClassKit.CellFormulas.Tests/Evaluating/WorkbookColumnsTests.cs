using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>
/// Cells on many inputs at once come to what they come to on one after the other. The evaluator, which the case files hold to the standard,
/// is what they are held against.
/// </summary>
public class WorkbookColumnsTests
{
    private static readonly double[] Flour = [640, 500, 0.3, 0];
    private static readonly double[] Loss = [0.12, 0.1, 0.2, -1];

    public static TheoryData<string, bool> Formulas =>
        new()
        {
            { "=A1", true },
            { "=A1*(1-A2)", true },
            { "=-A1^2", true },
            { "=+A1%", true },
            { "=$A$1/Sheet1!A2", true },
            { "=A2+0.1-0.3", true },
            { "=2^-1*A1", true },
            { "=A3*2", true },
            { "=A6+A1", true },
            { "=flour*2", true },
            { "=Sheet2!B1+1", true },
            { "=A1/(A1-500)", false },
            { "=A1^A1", false },
            { "=A1+A9", false },
            { "=A1&A2", false },
            { "=A4*2", false },
            { "=A5", false },
            { "=SUM(A1:A2)", false },
            { "=A1:A2", false },
            { "=ROUND(A1*A2,1)", false },
            { "=water", false },
            { "=C9", false },
            { "=Sheet3!A1", false },
            { "=1E300*A1*1E300", false },
            { "=(A1>400)+1", false },
            { "=A1 A2", false },
            { "=A7", false },
        };

    [Theory]
    [MemberData(nameof(Formulas))]
    public void They_are_what_each_comes_to_by_itself(string formula, bool isPlain)
    {
        var book = Filled(formula);
        var evaluator = new WorkbookEvaluator(book.Snapshot());

        var numbers = OnEach(evaluator).Numbers(Book.At("C1"));

        Assert.Equal(isPlain, numbers is not null);
        if (numbers is not null)
            Assert.Equal(OneByOne(evaluator), numbers.Cast<double?>());
    }

    [Fact]
    public void A_circle_and_a_long_chain_are_left_to_the_evaluator()
    {
        var book = new Book
        {
            ["A1"] = "640",
            ["A2"] = "0.1",
            ["C1"] = "=D1+A1",
            ["D1"] = "=C1",
            ["E1"] = "=A1",
        };
        for (var row = 2; row <= 5000; row++)
            book[$"E{row}"] = $"=E{row - 1}+1";
        book["F1"] = "=A1" + string.Concat(Enumerable.Repeat("+A1", 1900));
        var columns = OnEach(new WorkbookEvaluator(book.Snapshot()));

        Assert.Null(columns.Numbers(Book.At("C1")));
        Assert.Null(columns.Numbers(Book.At("E5000")));
        Assert.Equal([.. Flour.Select(flour => flour + 9)], columns.Numbers(Book.At("E10"))!);
        Assert.Equal(640 * 1901, columns.Numbers(Book.At("F1"))![0], 1e-6);
    }

    [Fact]
    public void The_same_formula_on_two_sheets_sees_the_names_of_each()
    {
        var book = new Book
        {
            ["A1"] = "1",
            ["Sheet2!A1"] = "=flour*2",
            ["C1"] = "=flour*2",
        };
        book.Name("flour", "Sheet1!$A$1").Name("flour", "Sheet2!$B$1", "Sheet2").Put("Sheet2!B1", Book.Content("7"));
        var evaluator = new WorkbookEvaluator(book.Snapshot(), parses: new());

        Assert.Equal(2, evaluator.Evaluate(Book.At("C1"), cancellation: TestContext.Current.CancellationToken).Value.Number);
        Assert.Equal(14, evaluator.Evaluate(Book.At("Sheet2!A1"), cancellation: TestContext.Current.CancellationToken).Value.Number);
        Assert.Equal([14.0], evaluator.OnEach(1, []).Numbers(Book.At("Sheet2!A1"))!);
    }

    [Fact]
    public void Steps_count_with_all_others()
    {
        var evaluator = new WorkbookEvaluator(Filled("=A1*(1-A2)").Snapshot(), new(LifeSteps: 25));

        Assert.NotNull(OnEach(evaluator).Numbers(Book.At("C1")));
        Assert.Null(OnEach(evaluator).Numbers(Book.At("C1")));
    }

    private static Book Filled(string formula) =>
        new Book
        {
            ["A1"] = "1",
            ["A2"] = "2",
            ["A3"] = "=A1*A2",
            ["A4"] = "'about",
            ["A6"] = "12.5",
            ["A7"] = "=C1",
            ["C1"] = formula,
            ["C9"] = "=NOW()",
            ["Sheet2!B1"] = "=Sheet1!A3/4",
        }.Name("flour", "Sheet1!$A$1");

    private static WorkbookColumns OnEach(WorkbookEvaluator evaluator) =>
        evaluator.OnEach(Flour.Length, [new(Book.At("A1"), Flour), new(Book.At("A2"), Loss)]);

    private static IEnumerable<double?> OneByOne(WorkbookEvaluator evaluator) =>
        Flour.Zip(Loss, (flour, loss) =>
            evaluator.Evaluate(
                Book.At("C1"),
                new Dictionary<CellAddress, CellValue>
                {
                    [Book.At("A1")] = CellValue.FromNumber(flour),
                    [Book.At("A2")] = CellValue.FromNumber(loss),
                },
                TestContext.Current.CancellationToken
            )
                is { Status: EvaluationStatus.Computed, Value: { IsNumber: true, Number: var number } }
                ? number
                : (double?)null
        );
}
