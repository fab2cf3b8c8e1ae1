using System.Text;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Differential;

/// <summary>
/// Random formulas with the values that LibreOffice once computed, so that most of the comparison runs without it.
/// CLASSKIT_WRITE_CORPUS=folder has it compute them anew.
/// </summary>
public class CorpusTests
{
    private const string Folder = "LibreOffice";
    private const int Seed = 7001;
    private const int Sheets = 10;

    public static TheoryData<string> Files => [.. CaseFile.Names(Folder)];

    [Theory]
    [MemberData(nameof(Files))]
    public void We_compute_what_LibreOffice_computed(string name)
    {
        var file = CaseFile.Read(Folder, name);
        Assert.Equal(RandomWorkbook.FormulasEach, file.Cases.Count);
        var evaluator = new WorkbookEvaluator(file.ToBook().Snapshot());
        var wrong = new List<string>();
        for (var at = 0; at < file.Cases.Count; at++)
        {
            var ours = evaluator.Evaluate(Book.At(CaseFile.CellOf(at)), cancellation: TestContext.Current.CancellationToken);
            if (!Agreement.Between(ours.Value, Literal.Read(file.Cases[at].Expected)))
                wrong.Add($"{file.Cases[at].Formula} gives {Literal.Write(ours.Value)}, expected {file.Cases[at].Expected}");
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    [Fact]
    public void LibreOffice_writes_the_corpus()
    {
        var folder = Environment.GetEnvironmentVariable("CLASSKIT_WRITE_CORPUS");
        Assert.SkipWhen(string.IsNullOrEmpty(folder), "Runs only to make the corpus anew: set CLASSKIT_WRITE_CORPUS to its folder.");
        var workbook = RandomWorkbook.Of(Seed, Sheets);
        var values = LibreOfficeValues.Of(workbook);
        foreach (var sheet in workbook.Sheets)
        {
            var text = new StringBuilder("# Random formulas, computed by LibreOffice\n");
            foreach (var ((row, column), content) in sheet.Cells.Where(cell => cell.Value.Formula is null))
                text.Append(new CellAddress(sheet.Name, row, column).Cell)
                    .Append(": ")
                    .Append(content.Stored.IsText ? "'" : "")
                    .Append(content.Stored.ToString())
                    .Append('\n');
            for (var row = 1; row <= RandomWorkbook.FormulasEach; row++)
                text.Append(sheet.Cells[(row, 8)].Formula)
                    .Append(" -> ")
                    .Append(Literal.Write(values.GetValueOrDefault(new(sheet.Name, row, 8))))
                    .Append('\n');
            File.WriteAllText(Path.Combine(folder!, sheet.Name + ".cases"), text.ToString());
        }
    }
}
