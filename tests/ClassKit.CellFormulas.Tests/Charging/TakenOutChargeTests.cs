using ClassKit.CellFormulas.Functions;

namespace ClassKit.CellFormulas.Tests.Charging;

/// <summary>
/// A charge that somebody forgets is found by <see cref="WorkChargedTests"/>, with the name of the function that does not pay.
/// </summary>
/// <remarks>Each charge is taken out of the compiled library in its turn and the test of the function is run on what is left.</remarks>
public class TakenOutChargeTests(ITestOutputHelper output)
{
    /// <summary>A loop of a function's own, and the function that must be named when the loop is free.</summary>
    public static TheoryData<string, string> OwnLoops =>
        new()
        {
            { "CashFlows.Rate", "IRR" },
            { "Counting.Choose", "COMBIN" },
            { "Counting.Permut", "PERMUT" },
            { "Delimiters.LengthAt", "TEXTSPLIT" },
            { "Depreciation.Declining", "DB" },
            { "Financial.Rate", "RATE" },
            { "Loans.Cumulative", "CUMIPMT" },
            { "NumberTexts.Text", "TEXT" },
            { "Searching.Locate", "SEARCH" },
            { "Workdays.Count", "NETWORKDAYS" },
            { "Workdays.Move", "WORKDAY" },
        };

    /// <summary>True for a function that does more than to visit what it is given.</summary>
    internal static bool HasOwnLoop(string function) => OwnLoops.Any(row => row.Data.Item2 == function);

    /// <summary>
    /// Charges for what visiting nodes and cells or handing out values costs. They are the measure itself: what a step takes is told from
    /// sums, and without them everything costs more.
    /// </summary>
    private static readonly string[] TheMeasure =
    [
        "Addressing.Cell",
        "Addressing.Intersect",
        "Addressing.Unite",
        "ArrayValue..ctor",
        "ArrayValue.get_Item",
        "Call.AddNumbers",
        "Call.Any",
        "Call.Sort",
        "Coercion.TryText",
        "Elementwise.Compute",
        "FunctionCalls.NamesNothing",
        "FunctionCalls.RunOnce",
        "Interpreter.Evaluate",
        "Interpreter.Operand",
        "NumberText.TryParse",
        "Operators.Apply",
        "TableReferences.Cells",
        "WorkbookAreas.Collect",
        "WorkbookAreas.CollectSorted",
        "WorkbookAreas.IsFilled",
        "WorkbookAreas.Recall",
        "WorkbookCells.Follow",
        "WorkbookCells.Read",
    ];

    /// <summary>
    /// Charges without which functions still pay within the bound at every size that is tried, for the values that were handed to them.
    /// They keep the count close to the work.
    /// </summary>
    private static readonly string[] OnTopOfValues =
    [
        "CashFlows.Dated",
        "CashFlows.Mirr",
        "Conditional.AreMet",
        "Counting.Fold",
        "Counting.Multinomial",
        "Delimiters..ctor",
        "Distributions.Frequency",
        "Financial.NetPresentValue",
        "KeyIndex..ctor",
        "Matrices.Eliminate",
        "References.Indirect",
        "Subtotals.IsSubtotal",
        "Texts.Substitute",
        "Wildcard.Matches",
        "Workdays.Holidays",
    ];

    [Theory]
    [MemberData(nameof(OwnLoops))]
    public void A_function_whose_charge_is_taken_out_is_named(string site, string function)
    {
        Assert.NotNull(FunctionRegistry.Find(function));

        var failure = WithoutCharge.Fails(
            site,
            typeof(WorkChargedTests),
            nameof(WorkChargedTests.A_function_pays_for_what_it_does),
            output,
            function
        );

        Assert.NotNull(failure);
        Assert.StartsWith(function + "(", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_charge_that_there_is_has_been_taken_out_once() =>
        Assert.Equal(
            WithoutCharge.Sites(),
            OwnLoops.Select(row => row.Data.Item1).Concat(TheMeasure).Concat(OnTopOfValues).Order(StringComparer.Ordinal)
        );
}
