using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>How much work a formula may do, at the very edge: what fits is computed, what is one too many is refused in words.</summary>
public class BoundsTests
{
    private static readonly Book Texts = new()
    {
        ["A1"] = new string('z', 256),
        ["A2"] = new string('z', 320),
        ["A3"] = new string('z', 32_000),
        ["A4"] = new string('z', 1_000),
        ["B1"] = "1",
        ["C1"] = "2",
        ["D1"] = "3",
        ["B2"] = "4",
        ["C2"] = "5",
        ["D2"] = "6",
    };

    private static Evaluation Evaluate(string formula, EvaluationLimits limits, string? filling = null)
    {
        Texts.Put("H9", new(CellValue.Blank, formula[1..], filling));
        return new WorkbookEvaluator(Texts.Snapshot(), limits).Evaluate(Book.At("H9"), cancellation: TestContext.Current.CancellationToken);
    }

    private static EvaluationStatus Status(string formula, int steps) => Evaluate(formula, new(Steps: steps)).Status;

    [Theory]
    [InlineData("=REPT(\"a\",2000)", 1_000)] // a long text that is made
    [InlineData("=FIND(REPT(\"z\",100)&\"b\",A3)", 10_000)] // a text looked for in a long one: 101 × 32 000 comparisons, 64 to a step
    [InlineData("=LEN(A3)", 1_000)] // a long text that is read: 32 000 characters, 16 to a step
    [InlineData("=SUM((B1:C2,B1:C2,B1:C2,B1:C2,B1:C2,B1:C2,B1:C2,B1:C2) (B1:D2,B1:D2,B1:D2,B1:D2,B1:D2,B1:D2,B1:D2,B1:D2))", 60)] // 64 pairs of areas
    public void Work_that_counts_is_refused(string formula, int steps) =>
        Assert.Equal(EvaluationStatus.Unsupported, Status(formula, steps));

    [Theory]
    [InlineData("=REPT(\"a\",256)", 20)] // 256 characters are short
    [InlineData("=LEN(A1)", 20)]
    [InlineData("=LEN(A2)", 100)] // 320 characters are 20 steps
    [InlineData("=LEN(A3)", 10_000)]
    [InlineData("=FIND(\"zb\",A4&\"b\")", 5_000)] // 2 × 1001 comparisons are 31 steps
    public void Work_that_counts_for_little_is_done(string formula, int steps) =>
        Assert.Equal(EvaluationStatus.Computed, Status(formula, steps));

    [Fact]
    public void Long_texts_made_element_by_element_count()
    {
        var limits = new EvaluationLimits(Steps: 1_000);

        Assert.Equal(EvaluationStatus.Unsupported, Evaluate("=SUM(LEN(B1:D2&REPT(\"a\",300)))", limits, "H9").Status);
        Assert.Equal(EvaluationStatus.Computed, Evaluate("=SUM(LEN(B1:D2&REPT(\"a\",30)))", limits, "H9").Status);
    }

    [Theory]
    [InlineData("=SUMPRODUCT(B1:D2*2)", 6)] // as large as what is read
    [InlineData("=SUMPRODUCT(B1:D1*B1:B2)", 6)] // larger than either
    [InlineData("=SUMPRODUCT(-B1:D2)", 6)]
    [InlineData("=SUMPRODUCT(ABS(B1:D2))", 6)]
    [InlineData("=SUMPRODUCT(B1:D2)", 6)]
    public void The_largest_array_that_is_allowed_is_made_and_no_larger_one(string formula, int cells)
    {
        Assert.Equal(EvaluationStatus.Computed, Evaluate(formula, new(ArrayCells: cells)).Status);

        var refused = Evaluate(formula, new(ArrayCells: cells - 1));
        Assert.Equal((EvaluationStatus.Unsupported, (Obstacle?)new Obstacle.ArrayTooLarge(cells - 1)), (refused.Status, refused.Reason));
    }

    [Fact]
    public void Just_enough_steps_are_enough()
    {
        var needed = Enumerable.Range(1, 100).First(steps => Status("=1+2", steps) == EvaluationStatus.Computed);

        Assert.Equal(EvaluationStatus.Computed, Evaluate("=1+2", new(AllSteps: needed)).Status);
        var refused = Evaluate("=1+2", new(AllSteps: needed - 1));
        Assert.Equal((EvaluationStatus.Unsupported, (Obstacle?)new Obstacle.TooManyStepsTogether()), (refused.Status, refused.Reason));
        Assert.Equal(new Obstacle.TooManySteps(needed - 1), Evaluate("=1+2", new(Steps: needed - 1)).Reason);
    }

    [Fact]
    public void Every_number_and_every_operator_is_a_step()
    {
        var ten = Enumerable.Range(1, 200).First(steps => Status("=1+1+1+1+1+1+1+1+1+1", steps) == EvaluationStatus.Computed);
        var twenty = Enumerable
            .Range(1, 200)
            .First(steps => Status("=1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1", steps) == EvaluationStatus.Computed);

        Assert.InRange(twenty - ten, 20, 23); // ten numbers and ten additions more, and the numbers at hand
    }

    /// <summary>
    /// The token is cancelled while the evaluation runs, not before: were nobody to ask it again, the evaluation would come to its end.
    /// </summary>
    [Fact]
    public void An_evaluation_can_be_cancelled_while_it_runs()
    {
        var book = new Book { ["A1"] = "=SUMPRODUCT(SEQUENCE(3000,300)*SEQUENCE(3000,300))" };
        for (var row = 2; row <= 60; row++)
            book[$"A{row}"] = $"=A{row - 1}+SUMPRODUCT(SEQUENCE(3000,300)*SEQUENCE(3000,300)*{row})";
        var evaluator = new WorkbookEvaluator(book.Snapshot(), new EvaluationLimits(Steps: int.MaxValue, AllSteps: long.MaxValue));
        using var cancelled = new CancellationTokenSource();
        cancelled.CancelAfter(TimeSpan.FromMilliseconds(50));

        Assert.Throws<OperationCanceledException>(() => evaluator.Evaluate(Book.At("A60"), cancellation: cancelled.Token));
    }

    [Theory]
    [InlineData("=ABS()", "ABS", 1, 1, 0)]
    [InlineData("=ABS(1,2)", "ABS", 1, 1, 2)]
    [InlineData("=POWER(1)", "POWER", 2, 2, 1)]
    [InlineData("=PI(1)", "PI", 0, 0, 1)]
    [InlineData("=SUMIF(A1:A2)", "SUMIF", 2, 3, 1)]
    [InlineData("=IFS(TRUE)", "IFS", 2, null, 1)]
    public void Too_few_or_too_many_arguments_are_counted_in_the_reason(string formula, string function, int least, int? most, int given)
    {
        var evaluation = Evaluate(formula, EvaluationLimits.Default);

        Assert.Equal(
            (CellError.Value, (Obstacle?)new Obstacle.Arguments(function, least, most, given)),
            (evaluation.Value.Error, evaluation.Reason)
        );
    }

    [Fact]
    public void The_first_reason_stays() =>
        Assert.Equal(
            new Obstacle.Arguments("ABS", 1, 1, 2),
            Evaluate("=IFERROR(ABS(1,2),1)+IFERROR(POWER(1),1)+FLOWER(1)", EvaluationLimits.Default).Reason
        );

    [Fact]
    public void Subtotals_leave_out_other_subtotals_and_no_other_formula()
    {
        var book = new Book
        {
            ["A1"] = "=1+1",
            ["A2"] = "=SUBTOTAL(9,A1)",
            ["A3"] = "=AGGREGATE(9,4,A1)",
            ["A4"] = "5",
            ["B1"] = "=SUBTOTAL(9,A1:A4)",
        };

        Assert.Equal(7, book.Value("B1").Number);
    }

    [Theory]
    [InlineData("=Z1=FALSE", true)]
    [InlineData("=Z1=TRUE", false)]
    [InlineData("=Z1=0", true)]
    [InlineData("=Z1=\"\"", true)]
    [InlineData("=Z1=Z2", true)]
    public void A_blank_is_equal_to_the_empty_value_of_each_kind(string formula, bool equal) =>
        Assert.Equal(CellValue.FromLogical(equal), Evaluate(formula, EvaluationLimits.Default).Value);

    [Fact]
    public void Where_only_names_have_values_an_unknown_function_is_a_misspelling_and_a_table_is_none()
    {
        static Evaluation Named(string formula) => NamedEvaluation.Evaluate(CellFormula.Of(formula), new Dictionary<string, CellValue>());

        var misspelt = Named("=FLOWER(1)");
        Assert.Equal(
            (EvaluationStatus.Computed, CellError.Name, (Obstacle?)new Obstacle.NoFunction("FLOWER")),
            (misspelt.Status, misspelt.Value.Error, misspelt.Reason)
        );
        var table = Named("=SUM(Doughs[Flour])");
        Assert.Equal((EvaluationStatus.Unsupported, (Obstacle?)new Obstacle.NoTables("Doughs[Flour]")), (table.Status, table.Reason));
    }
}
