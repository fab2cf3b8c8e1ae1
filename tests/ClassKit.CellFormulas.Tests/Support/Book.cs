using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Support;

/// <summary>
/// Builds small workbooks for tests: <c>new Book { ["A1"] = "5", ["B1"] = "=A1*2" }</c>. A text that reads as a number is one; <c>'</c>
/// before it keeps it text.
/// </summary>
internal sealed class Book
{
    private readonly Dictionary<string, Dictionary<(int, int), CellContent>> _sheets = new() { ["Sheet1"] = [] };
    private readonly List<DefinedName> _names = [];

    public string this[string cell]
    {
        set => Put(cell, Content(value));
    }

    public void Put(string cell, CellContent content)
    {
        var address = At(cell);
        if (!_sheets.TryGetValue(address.Sheet, out var cells))
            _sheets.Add(address.Sheet, cells = []);
        cells[(address.Row, address.Column)] = content;
    }

    public Book Name(string name, string formula, string? sheet = null)
    {
        _names.Add(new(name, sheet, formula));
        return this;
    }

    public WorkbookSnapshot Snapshot(DateSystem dates = DateSystem.From1900) =>
        new([.. _sheets.Select(sheet => new SheetSnapshot(sheet.Key, sheet.Value))], _names, dates);

    public Evaluation Evaluate(string cell, params (string Cell, CellValue Value)[] replaced) =>
        new WorkbookEvaluator(Snapshot()).Evaluate(
            At(cell),
            replaced.ToDictionary(pair => At(pair.Cell), pair => pair.Value),
            TestContext.Current.CancellationToken
        );

    public CellValue Value(string cell)
    {
        var evaluation = Evaluate(cell);
        Assert.True(evaluation.Status == EvaluationStatus.Computed, $"{cell}: {evaluation.Status}, {evaluation.Reason}");
        return evaluation.Value;
    }

    public static CellAddress At(string cell)
    {
        var mark = cell.LastIndexOf('!');
        var sheet = mark < 0 ? "Sheet1" : cell[..mark];
        Assert.True(CellAddress.TryParse(sheet, cell.AsSpan(mark + 1), out var address), $"no cell: {cell}");
        return address;
    }

    public static CellContent Content(string text) => text.StartsWith('=') ? new(CellValue.Blank, text[1..]) : new(Literal.Read(text));
}
