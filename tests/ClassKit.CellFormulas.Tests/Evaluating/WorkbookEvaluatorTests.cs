using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

public class WorkbookEvaluatorTests
{
    [Fact]
    public void A_cell_is_recomputed_and_its_stored_value_ignored()
    {
        var book = new Book { ["A1"] = "5" };
        book.Put("B1", new(CellValue.FromNumber(99), "A1*2"));
        Assert.Equal(10, book.Value("B1").Number);
    }

    [Fact]
    public void A_cell_without_formula_has_its_stored_value()
    {
        var book = new Book { ["A1"] = "'rye" };
        Assert.Equal("rye", book.Value("A1").Text);
        Assert.True(book.Value("B7").IsBlank);
    }

    [Fact]
    public void Replaced_cells_take_the_place_of_values_and_of_formulas()
    {
        var book = new Book
        {
            ["A1"] = "5",
            ["B1"] = "=A1*2",
            ["C1"] = "=B1+A1",
        };
        Assert.Equal(21, book.Evaluate("C1", ("A1", CellValue.FromNumber(7))).Value.Number);
        Assert.Equal(105, book.Evaluate("C1", ("B1", CellValue.FromNumber(100))).Value.Number);
        Assert.Equal(15, book.Value("C1").Number);
    }

    [Fact]
    public void A_replaced_cell_that_the_file_does_not_hold_counts_in_ranges()
    {
        var book = new Book
        {
            ["A1"] = "5",
            ["B1"] = "=SUM(A1:A9)",
            ["C1"] = "=SUM(A:A)",
        };
        Assert.Equal(8, book.Evaluate("B1", ("A9", CellValue.FromNumber(3))).Value.Number);
        Assert.Equal(8, book.Evaluate("C1", ("A9", CellValue.FromNumber(3))).Value.Number);
    }

    [Fact]
    public void Every_cell_read_is_a_dependency_direct_or_not()
    {
        var book = new Book
        {
            ["A1"] = "5",
            ["A2"] = "6",
            ["A3"] = "7",
            ["B1"] = "=A1*2",
            ["C1"] = "=IF(TRUE,B1,A3)+SUM(A2:A2)",
        };
        Assert.Equal([Book.At("A1"), Book.At("B1"), Book.At("A2")], book.Evaluate("C1").Dependencies);
    }

    [Fact]
    public void Constants_alone_depend_on_nothing() =>
        Assert.Empty(
            new Book { ["A1"] = "=2*3" }
                .Evaluate("A1")
                .Dependencies
        );

    [Fact]
    public void Names_of_the_own_sheet_come_before_those_of_the_workbook()
    {
        var book = new Book
        {
            ["A1"] = "5",
            ["B1"] = "=rate",
            ["Other!A1"] = "=RATE",
        }
            .Name("rate", "1")
            .Name("rate", "2", "Other");
        Assert.Equal(1, book.Value("B1").Number);
        Assert.Equal(2, book.Value("Other!A1").Number);
    }

    [Fact]
    public void Names_stand_for_references_and_for_formulas()
    {
        var book = new Book
        {
            ["A1"] = "5",
            ["A2"] = "7",
            ["B1"] = "=SUM(inputs)*twice",
        }
            .Name("inputs", "Sheet1!$A$1:$A$2")
            .Name("twice", "1+1");
        Assert.Equal(24, book.Value("B1").Number);
    }

    [Fact]
    public void A_relative_name_is_seen_from_the_cell_that_uses_it()
    {
        // ECMA-376 Part 1, 18.2.5: relative references in a defined name are as seen from A1.
        var book = new Book { ["A3"] = "5", ["B3"] = "=left" }.Name("left", "Sheet1!XFD1");
        Assert.Equal(5, book.Value("B3").Number);
    }

    [Fact]
    public void An_unknown_name_sheet_or_function_is_an_error_value_with_a_reason()
    {
        Assert.Equal(new Obstacle.NoName("flower"), Errored(CellError.Name, new Book { ["A1"] = "=flower*2" }.Evaluate("A1")));
        Assert.Equal(new Obstacle.NoSheet("Nowhere"), Errored(CellError.Reference, new Book { ["A1"] = "=Nowhere!A1" }.Evaluate("A1")));
        Assert.Equal(new Obstacle.NoFunction("SUMM"), Errored(CellError.Name, new Book { ["A1"] = "=SUMM(1,2)" }.Evaluate("A1")));
    }

    [Fact]
    public void Every_cell_of_a_circle_is_an_error_and_the_circle_is_named()
    {
        var book = new Book
        {
            ["A1"] = "=B1+1",
            ["B1"] = "=C1",
            ["C1"] = "=IFERROR(A1,3)",
            ["D1"] = "=A1",
            ["E1"] = "=IFERROR(A1,4)",
        };
        foreach (var cell in new[] { "A1", "B1", "C1", "D1" })
            Assert.IsType<Obstacle.Circle>(Errored(CellError.Reference, book.Evaluate(cell)));
        Assert.Equal(new Obstacle.Circle([Book.At("A1"), Book.At("B1"), Book.At("C1")], 3, IsIterated: false), book.Evaluate("A1").Reason);
        Assert.Equal(4, book.Value("E1").Number);
    }

    [Fact]
    public void Whether_a_cell_is_in_a_circle_does_not_depend_on_where_one_starts()
    {
        // A1 reads B1 first, which closes a circle; D1 is in a circle too, through B1.
        var book = new Book
        {
            ["A1"] = "=B1+D1",
            ["B1"] = "=A1",
            ["D1"] = "=IFERROR(B1,1)",
        };
        foreach (var cell in new[] { "A1", "B1", "D1" })
            Assert.IsType<Obstacle.Circle>(Errored(CellError.Reference, book.Evaluate(cell)));
    }

    [Fact]
    public void A_chain_of_a_hundred_thousand_cells_is_followed()
    {
        var book = new Book { ["A1"] = "1" };
        for (var row = 2; row <= 100_000; row++)
            book.Put($"A{row}", new(CellValue.Blank, $"A{row - 1}+1"));
        Assert.Equal(100_000, book.Value("A100000").Number);
    }

    [Fact]
    public void A_circle_of_a_thousand_cells_is_found()
    {
        var book = new Book { ["A1"] = "=A1000" };
        for (var row = 2; row <= 1000; row++)
            book.Put($"A{row}", new(CellValue.Blank, $"A{row - 1}+1"));
        Assert.Equal(CellError.Reference, book.Value("A500").Error);
    }

    [Fact]
    public void Too_many_steps_end_without_a_value()
    {
        var evaluator = new WorkbookEvaluator(new Book { ["A1"] = "=SUM(1,2,3,4,5,6,7,8,9)" }.Snapshot(), new EvaluationLimits(Steps: 5));
        var evaluation = evaluator.Evaluate(Book.At("A1"), cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(EvaluationStatus.Unsupported, evaluation.Status);
        Assert.Equal(new Obstacle.TooManySteps(5), evaluation.Reason);
    }

    [Fact]
    public void Doubling_over_and_over_is_bounded()
    {
        // Without a memory of what is known this would take 2^60 steps.
        var book = new Book { ["A1"] = "1" };
        for (var row = 2; row <= 60; row++)
            book[$"A{row}"] = $"=A{row - 1}+A{row - 1}";
        Assert.Equal(Math.Pow(2, 59), book.Value("A60").Number);
        var texts = new Book { ["A1"] = "x" };
        for (var row = 2; row <= 60; row++)
            texts[$"A{row}"] = $"=A{row - 1}&A{row - 1}";
        Assert.Equal(CellError.Value, texts.Value("A60").Error);
    }

    [Fact]
    public void A_cancelled_evaluation_stops()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        var evaluator = new WorkbookEvaluator(new Book { ["A1"] = "=SUMSQ(B1:Z2000*1)", ["Z2000"] = "1" }.Snapshot());
        Assert.Throws<OperationCanceledException>(() => evaluator.Evaluate(Book.At("A1"), cancellation: cancelled.Token));
    }

    [Fact]
    public void A_text_that_is_no_formula_is_unsupported_with_the_place()
    {
        var evaluation = new Book { ["A1"] = "=B1", ["B1"] = "=1+" }.Evaluate("A1");
        Assert.Equal(EvaluationStatus.Unsupported, evaluation.Status);
        Assert.Equal(Book.At("B1"), Assert.IsType<Obstacle.NoFormula>(evaluation.Reason).Cell);
    }

    [Fact]
    public void What_cannot_be_evaluated_is_not_hidden_by_IFERROR_and_not_met_in_a_branch_not_taken()
    {
        var book = new Book { ["A1"] = "=IFERROR(Doughs[Flour],1)", ["A2"] = "=IF(TRUE,2,Doughs[Flour])" };
        Assert.Equal(EvaluationStatus.Unsupported, book.Evaluate("A1").Status);
        Assert.Equal(2, book.Value("A2").Number);
    }

    [Fact]
    public void A_range_where_one_value_is_wanted_gives_the_cell_beside_the_formula()
    {
        // OpenFormula 1.3, 6.3.3: implied intersection.
        var book = new Book
        {
            ["A1"] = "5",
            ["A2"] = "7",
            ["B2"] = "=A1:A3*2",
            ["B9"] = "=A1:A3*2",
            ["C2"] = "=ABS(A:A)",
        };
        Assert.Equal(14, book.Value("B2").Number);
        Assert.Equal(CellError.Value, book.Value("B9").Error);
        Assert.Equal(7, book.Value("C2").Number);
    }

    [Fact]
    public void An_array_formula_works_element_by_element_and_fills_its_range()
    {
        var book = new Book { ["A1"] = "5", ["A2"] = "7" };
        book.Put("B1", new(CellValue.Blank, "A1:A2*2", "B1:B3"));
        book.Put("C1", new(CellValue.Blank, "SUM(A1:A2*A1:A2)", "C1"));
        book["D1"] = "=SUM(B1:B2)";
        Assert.Equal(10, book.Value("B1").Number);
        Assert.Equal(14, book.Value("B2").Number);
        Assert.Equal(CellError.NotAvailable, book.Value("B3").Error);
        Assert.Equal(74, book.Value("C1").Number);
        Assert.Equal(24, book.Value("D1").Number);
    }

    [Fact]
    public void A_formula_that_refers_to_an_empty_cell_shows_zero() =>
        Assert.Equal(
            0,
            new Book { ["A1"] = "=Z9" }
                .Value("A1")
                .Number
        );

    private static Obstacle? Errored(CellError error, Evaluation evaluation)
    {
        Assert.Equal(EvaluationStatus.Computed, evaluation.Status);
        Assert.Equal(error, evaluation.Value.Error);
        return evaluation.Reason;
    }

    [Fact]
    public void An_unknown_function_is_a_misspelling_unless_macros_come_with_the_workbook()
    {
        var book = new Book { ["A1"] = "=DOUGHWEIGHT(5)" };
        Assert.Equal(CellError.Name, book.Value("A1").Error);

        var evaluation = new WorkbookEvaluator(book.Snapshot() with { HasMacros = true }).Evaluate(
            Book.At("A1"),
            cancellation: TestContext.Current.CancellationToken
        );
        Assert.Equal(EvaluationStatus.Unsupported, evaluation.Status);
        Assert.IsType<Obstacle.MayBeMacro>(evaluation.Reason);
    }

    [Fact]
    public void A_circle_that_the_workbook_goes_round_on_purpose_is_unsupported()
    {
        var book = new Book { ["A1"] = "=B1/2+1", ["B1"] = "=A1" };
        Assert.Equal(CellError.Reference, book.Value("A1").Error);

        var evaluation = new WorkbookEvaluator(book.Snapshot() with { IteratesCircles = true }).Evaluate(
            Book.At("A1"),
            cancellation: TestContext.Current.CancellationToken
        );
        Assert.Equal(EvaluationStatus.Unsupported, evaluation.Status);
        Assert.True(Assert.IsType<Obstacle.Circle>(evaluation.Reason).IsIterated);
    }

    [Fact]
    public void A_what_if_table_is_unsupported_and_no_misspelling() =>
        Assert.Equal(
            EvaluationStatus.Unsupported,
            new Book { ["A1"] = "=TABLE()" }
                .Evaluate("A1")
                .Status
        );

    [Theory]
    [InlineData("SUBTOTAL(9,A1:A4)", false, 15)]
    [InlineData("SUBTOTAL(109,A1:A4)", false, 13)]
    [InlineData("SUBTOTAL(9,A1:A4)", true, 13)] // what a filter hides is never counted
    [InlineData("AGGREGATE(9,4,A1:A4)", false, 15)]
    [InlineData("AGGREGATE(9,5,A1:A4)", false, 13)]
    [InlineData("SUM(A1:A4)", true, 15)]
    public void Subtotals_leave_out_hidden_rows(string formula, bool isFiltered, double sum)
    {
        var book = new Book
        {
            ["A1"] = "1",
            ["A2"] = "2",
            ["A3"] = "4",
            ["A4"] = "8",
            ["B1"] = "=" + formula,
        }.Snapshot();
        var sheet = book.Sheets[0] with
        {
            HiddenRows = new HashSet<int> { 2 },
            FilteredRows = isFiltered ? (2, 4) : null,
        };
        Assert.Equal(
            sum,
            new WorkbookEvaluator(book with { Sheets = [sheet] })
                .Evaluate(Book.At("B1"), cancellation: TestContext.Current.CancellationToken)
                .Value.Number
        );
    }

    [Fact]
    public void Cells_asked_for_together_share_one_count_of_steps()
    {
        var book = new Book();
        for (var row = 1; row <= 50; row++)
            book[$"A{row}"] = "=SUM(1,2,3)";
        var evaluator = new WorkbookEvaluator(book.Snapshot(), new EvaluationLimits(AllSteps: 100));
        var evaluations = evaluator.EvaluateAll(
            [.. Enumerable.Range(1, 50).Select(row => new CellAddress("Sheet1", row, 1))],
            cancellation: TestContext.Current.CancellationToken
        );
        Assert.Equal(EvaluationStatus.Computed, evaluations[0].Status);
        Assert.Equal(EvaluationStatus.Unsupported, evaluations[^1].Status);
        Assert.IsType<Obstacle.TooManyStepsTogether>(evaluations[^1].Reason);
    }

    [Fact]
    public void All_that_an_evaluator_is_ever_asked_for_shares_one_count_of_steps()
    {
        var book = new Book { ["A1"] = "=SUM(1,2,3)" };
        var evaluator = new WorkbookEvaluator(book.Snapshot(), new EvaluationLimits(LifeSteps: 1_000));
        var statuses = Enumerable
            .Range(1, 1_000)
            .Select(_ => evaluator.Evaluate(Book.At("A1"), cancellation: TestContext.Current.CancellationToken).Status)
            .ToList();
        Assert.Equal(EvaluationStatus.Computed, statuses[0]);
        Assert.Equal(EvaluationStatus.Unsupported, statuses[^1]);
    }

    [Theory]
    [InlineData("SEARCH(\"*a*a*a*a*a*a*b\",REPT(\"a\",32000))")]
    [InlineData("FIND(REPT(\"a\",16000)&\"b\",REPT(\"a\",32000))")]
    [InlineData("TEXT(1,REPT(\"0\",30000))")]
    [InlineData("SUM(A2:A3)+COUNTIF(A2:A3,\"*z*z*z\")")]
    public void Long_texts_are_work_that_counts(string formula)
    {
        var book = new Book
        {
            ["A1"] = "=" + formula,
            ["A2"] = new string('z', 32_000),
            ["A3"] = new string('z', 32_000),
        };
        Assert.Equal(
            EvaluationStatus.Unsupported,
            new WorkbookEvaluator(book.Snapshot(), new EvaluationLimits(Steps: 2_500))
                .Evaluate(Book.At("A1"), cancellation: TestContext.Current.CancellationToken)
                .Status
        );
    }

    [Theory]
    [InlineData("a*c", "xabc", 2)]
    [InlineData("*c", "abc", 1)]
    [InlineData("a*", "xxa", 3)]
    [InlineData("b?d*f", "abcdexf", 2)]
    [InlineData("~*b", "a*b*b", 2)]
    [InlineData("a*~*", "xab*", 2)]
    [InlineData("b*b", "abcb", 2)]
    [InlineData("c*a", "abc", 0)]
    [InlineData("", "abc", 1)]
    [InlineData("~~", "a~", 2)]
    [InlineData("A*B", "xxaxxb", 3)]
    public void A_pattern_is_found_where_it_first_fits(string pattern, string text, int place)
    {
        // OpenFormula 1.3, 6.20.18 (SEARCH) with the wildcards of 3.4; places counted by hand.
        var book = new Book { ["A1"] = $"=SEARCH(\"{pattern}\",\"{text}\")" };
        var value = new WorkbookEvaluator(book.Snapshot())
            .Evaluate(Book.At("A1"), cancellation: TestContext.Current.CancellationToken)
            .Value;
        Assert.Equal(place == 0 ? CellValue.FromError(CellError.Value) : CellValue.FromNumber(place), value);
    }

    [Fact]
    public void What_has_no_value_is_not_looked_for_again()
    {
        // A long chain from an unsupported start: found out once, and not once more for every cell.
        var book = new Book { ["A1"] = "=CELL(\"width\")" };
        for (var row = 2; row <= 300; row++)
            book[$"A{row}"] = $"=A{row - 1}+1";
        var evaluator = new WorkbookEvaluator(book.Snapshot(), new EvaluationLimits(AllSteps: 5_000));
        var evaluations = evaluator.EvaluateAll(
            [.. Enumerable.Range(1, 300).Select(row => new CellAddress("Sheet1", row, 1))],
            cancellation: TestContext.Current.CancellationToken
        );
        Assert.All(evaluations, evaluation => Assert.Equal(new Obstacle.UnknownFunction("CELL"), evaluation.Reason));
    }

    [Fact]
    public void A_name_that_stands_for_itself_is_found_out_at_once()
    {
        var book = new Book { ["A1"] = "=twice" }.Name("twice", "twice+twice+twice");
        var evaluation = new WorkbookEvaluator(book.Snapshot(), new EvaluationLimits(Steps: 100)).Evaluate(
            Book.At("A1"),
            cancellation: TestContext.Current.CancellationToken
        );
        Assert.Equal(CellError.Reference, evaluation.Value.Error);
        Assert.Equal(new Obstacle.NameOfItself("twice"), evaluation.Reason);
    }

    [Fact]
    public void A_relative_name_may_lead_from_cell_to_cell()
    {
        var book = new Book
        {
            ["A1"] = "1",
            ["A2"] = "=above*2",
            ["A3"] = "=above*2",
        }.Name("above", "Sheet1!A1048576");
        Assert.Equal(4, book.Value("A3").Number);
    }

    [Theory]
    [InlineData("\"2000-01-01\"+0", 36526, 35064)]
    [InlineData("VALUE(\"1/1/2000 12:00\")", 36526.5, 35064.5)]
    [InlineData("DATEVALUE(\"2000-01-01\")", 36526, 35064)]
    [InlineData("DATE(2000,1,1)", 36526, 35064)]
    [InlineData("\"12:00\"+0", 0.5, 0.5)]
    [InlineData("\"35064\"+0", 35064, 35064)]
    public void A_date_typed_as_text_counts_in_the_workbooks_calendar(string formula, double since1900, double since1904)
    {
        var book = new Book { ["A1"] = "=" + formula };
        Assert.Equal(since1900, book.Value("A1").Number);
        Assert.Equal(
            since1904,
            new WorkbookEvaluator(book.Snapshot(DateSystem.From1904))
                .Evaluate(Book.At("A1"), cancellation: TestContext.Current.CancellationToken)
                .Value.Number
        );
    }
}
