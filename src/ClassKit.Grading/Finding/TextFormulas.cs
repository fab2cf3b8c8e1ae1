using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.Grading.Finding;

/// <summary>Formulas that stand in a workbook as text, because their cells were formatted as text before they were typed.</summary>
internal sealed class TextFormulas
{
    /// <summary>The characters that are looked at, all texts together. A student's whole workbook has some thousand.</summary>
    private const int MostCharacters = 200_000;

    private readonly WorkbookSnapshot _workbook;
    private readonly Dictionary<string, string?> _known = new(StringComparer.Ordinal);
    private int _left = MostCharacters;

    /// <summary>Looks for them in a workbook.</summary>
    public TextFormulas(WorkbookSnapshot workbook) => _workbook = workbook;

    /// <summary>The workbook with those formulas at work, as they would be if they were entered again.</summary>
    /// <remarks>Only what reads as a formula is changed; anything else that begins with <c>=</c> stays the text it is.</remarks>
    public WorkbookSnapshot Revived() =>
        _workbook.Sheets.Any(sheet => sheet.Cells.Values.Any(IsOne))
            ? _workbook with
            {
                Sheets = [.. _workbook.Sheets.Select(Revive)],
            }
            : _workbook;

    /// <summary>
    /// True for a cell that holds a formula as text. Words behind an equals sign read as names, so the names must be there.
    /// </summary>
    public bool IsOne(CellContent content) => Formula(content) is not null;

    /// <summary>The formula that a cell holds as text, with its <c>=</c>; null if it holds none.</summary>
    private string? Formula(CellContent content)
    {
        if (content is not { Formula: null, Stored: { IsText: true, Text: { Length: > 1 } text } } || !TypedFormula.Begins(text))
            return null;
        if (_known.TryGetValue(text, out var known))
            return known;
        _left -= text.Length;
        if (_left < 0)
            return null;
        return _known[text] = TypedFormula
            .Readings(text)
            .FirstOrDefault(reading =>
                CellFormula.Parse(reading).Formula is { } formula && formula.Names.All(name => _workbook.FindName(name) is not null)
            );
    }

    private SheetSnapshot Revive(SheetSnapshot sheet) =>
        sheet with
        {
            Cells = sheet.Cells.ToDictionary(
                cell => cell.Key,
                cell => Formula(cell.Value) is { } formula ? new CellContent(CellValue.Blank, formula[1..]) : cell.Value
            ),
        };
}
