using System.Globalization;
using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Functions;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Charging;

/// <summary>
/// No function does more than it pays for. Each is called with arguments that grow, singly, in pairs and all together, applied element by
/// element where they are arrays; its processor time and the memory that it asks for, measured from outside, are held against the steps
/// that it counted.
/// </summary>
/// <remarks>
/// The measure is what a step takes where cells are summed up, in the same run on the same machine; a function may take many times that.
/// One that does n × m work and pays for n + m is further off than that at the sizes tried.
/// </remarks>
public class WorkChargedTests(ITestOutputHelper output)
{
    private const double MostTimesTheMeasure = 10;
    private const double ShortNanoseconds = 4e6;
    private const long MostBytesPerStep = 500;
    private const long FewBytes = 4_000_000;
    private static readonly EvaluationLimits Limits = new(Steps: 60_000, AllSteps: long.MaxValue);
    private static readonly Probe Sums = new([
        new(
            "Sheet1",
            new Dictionary<(int, int), CellContent>
            {
                [(1, 1)] = new(CellValue.Blank, "SUM(Data!A1:B8000)+SUMPRODUCT(Data!A1:A8000*Data!A1:A8000)"),
            }
        ),
        .. Growth.Sheets,
    ]);
    private static readonly Lazy<double> Quiet = new(() => Enumerable.Range(0, 10).Min(_ => StepInSums()));

    public static TheoryData<string> Functions => [.. FunctionRegistry.All.Select(function => function.Name).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Functions))]
    public void A_function_pays_for_what_it_does(string name)
    {
        var function = FunctionRegistry.Find(name)!;
        var file = CaseFile.Read("Functions", name);
        var example = file
            .Cases.SelectMany(one => CallsOf(name, CellFormula.Of(one.Formula).Root))
            .MaxBy(call => Math.Min(call.Arguments.Count, 6));
        Assert.NotNull(example);
        var calls = Growth.Calls(function, example).ToList();
        var cells = file.ToBook().Snapshot().Sheets[0].Cells.ToDictionary(cell => cell.Key, cell => cell.Value);
        const int Column = 40;
        for (var at = 0; at < calls.Count; at++)
        {
            for (var size = 0; size < Growth.Sizes.Count; size++)
            {
                var row = at * Growth.Sizes.Count + size + 1;
                cells[(row, Column)] = new(
                    CellValue.Blank,
                    calls[at](Growth.Sizes[size]),
                    string.Create(CultureInfo.InvariantCulture, $"{CellAddress.ColumnLetters(Column)}{row}")
                );
            }
        }

        var probe = new Probe([new("Sheet1", cells), .. Growth.Sheets]);
        for (var row = 1; row <= calls.Count * Growth.Sizes.Count; row++)
        {
            var (work, step) = (probe.Run(row, Column), Quiet.Value);
            // On a machine that others use the same work takes several times as long: then both are measured, one behind the other.
            for (var again = 0; again < 5 && !IsPaid(work, step); again++)
                (work, step) = (probe.Run(row, Column), Math.Max(Quiet.Value, Enumerable.Range(0, 3).Min(_ => StepInSums())));
            if (!IsPaid(work, step))
                output.WriteLine($"{cells[(row, Column)].Formula}: {work}");
            Assert.True(
                IsPaid(work, step),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{cells[(row, Column)].Formula} took {work.Nanoseconds / 1e6:0.0} ms and {work.Bytes} bytes and paid {work.Steps} steps, at {step:0} ns a step in sums"
                )
            );
        }
    }

    private static double StepInSums()
    {
        lock (Sums)
        {
            var work = Sums.Run(1);
            return work.Nanoseconds / work.Steps;
        }
    }

    private static bool IsPaid(Work work, double step) =>
        (work.Nanoseconds < ShortNanoseconds || work.Nanoseconds < MostTimesTheMeasure * step * work.Steps)
        && (work.Bytes < FewBytes || work.Bytes < MostBytesPerStep * work.Steps);

    private static IEnumerable<CallNode> CallsOf(string name, FormulaNode node)
    {
        switch (node)
        {
            case CallNode call:
                if (call.Name == name)
                    yield return call;
                foreach (var inner in call.Arguments.SelectMany(argument => CallsOf(name, argument)))
                    yield return inner;
                break;
            case BinaryNode binary:
                foreach (var inner in CallsOf(name, binary.Left).Concat(CallsOf(name, binary.Right)))
                    yield return inner;
                break;
            case PrefixNode prefix:
                foreach (var inner in CallsOf(name, prefix.Operand))
                    yield return inner;
                break;
            case GroupNode group:
                foreach (var inner in CallsOf(name, group.Inner))
                    yield return inner;
                break;
        }
    }

    private sealed record Work(double Nanoseconds, long Bytes, long Steps);

    private sealed class Probe(IReadOnlyList<SheetSnapshot> sheets)
    {
        private readonly WorkbookInterpreter _interpreter = new(new PreparedWorkbook(new WorkbookSnapshot(sheets, [])), Limits);

        public Work Run(int row, int column = 1)
        {
            _interpreter.Begin(Replacements.None, long.MaxValue);
            var (bytes, time) = (GC.GetAllocatedBytesForCurrentThread(), ThreadTime.Nanoseconds);
            _interpreter.Evaluate(new(0, row, column), () => [], CancellationToken.None);
            return new(
                ThreadTime.Nanoseconds - time,
                GC.GetAllocatedBytesForCurrentThread() - bytes,
                Math.Max(1, _interpreter.Meter.Spent)
            );
        }
    }
}
