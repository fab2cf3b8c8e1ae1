using ClassKit.CellFormulas;

namespace ClassKit.Grading;

/// <summary>Formulas that stand in a workbook as text, because their cells were formatted as text before they were typed.</summary>
internal static class TextFormulas
{
    /// <summary>The workbook with those formulas at work, as they would be if they were entered again.</summary>
    /// <remarks>Only what reads as a formula is changed; anything else that begins with <c>=</c> stays the text it is.</remarks>
    public static WorkbookSnapshot Revive(WorkbookSnapshot workbook) => workbook.Sheets.Any(sheet => sheet.Cells.Values.Any(content => IsOne(workbook, content)))
        ? workbook with { Sheets = [.. workbook.Sheets.Select(sheet => Revive(workbook, sheet))] }
        : workbook;

    /// <summary>True for a cell that holds a formula as text. Words behind an equals sign read as names, so the names must be there.</summary>
    public static bool IsOne(WorkbookSnapshot workbook, CellContent content) =>
        content is { Formula: null, Stored: { IsText: true, Text: { Length: > 1 } text } } && text[0] == '='
        && CellFormula.Parse(text).Formula is { } formula && formula.Names.All(name => workbook.FindName(name) is not null);

    private static SheetSnapshot Revive(WorkbookSnapshot workbook, SheetSnapshot sheet) => sheet with
    {
        Cells = sheet.Cells.ToDictionary(cell => cell.Key, cell => IsOne(workbook, cell.Value) ? new CellContent(CellValue.Blank, cell.Value.Stored.Text[1..]) : cell.Value),
    };
}
