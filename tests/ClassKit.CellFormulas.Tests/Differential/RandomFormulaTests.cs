using System.Globalization;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Differential;

/// <summary>Thousands of random formulas, computed here and by LibreOffice. CLASSKIT_SEED tries others.</summary>
public class RandomFormulaTests
{
    private const int Sheets = 20;

    private static int Seed =>
        int.TryParse(Environment.GetEnvironmentVariable("CLASSKIT_SEED"), NumberStyles.None, CultureInfo.InvariantCulture, out var seed)
            ? seed
            : 20261125;

    [Fact]
    public void LibreOffice_computes_the_same()
    {
        var workbook = RandomWorkbook.Of(Seed, Sheets);
        var theirs = LibreOfficeValues.Of(workbook);
        var evaluator = new WorkbookEvaluator(workbook);
        var differences = new List<string>();
        var compared = 0;
        foreach (var sheet in workbook.Sheets)
        {
            foreach (var ((row, column), content) in sheet.Cells)
            {
                if (content.Formula is not { } formula)
                    continue;
                var address = new CellAddress(sheet.Name, row, column);
                var ours = evaluator.Evaluate(address, cancellation: TestContext.Current.CancellationToken);
                Assert.True(ours.Status == EvaluationStatus.Computed, $"{formula}: {ours.Status} {ours.Reason}");
                compared++;
                var value = theirs.GetValueOrDefault(address);
                if (Agreement.Between(ours.Value, value))
                    continue;
                differences.Add($"{address}: ={formula} is {Literal.Write(ours.Value)}, in LibreOffice {Literal.Write(value)}");
            }
        }

        Assert.Equal(Sheets * (RandomWorkbook.FormulasEach + 2 * RandomWorkbook.ArraysEach), compared);
        Assert.True(
            differences.Count == 0,
            $"seed {Seed}, {differences.Count} of {compared} differ:\n{string.Join("\n", differences.Take(200))}"
        );
    }
}
