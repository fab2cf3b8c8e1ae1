using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Finds a dealt cell again in a workbook that a student has worked in.</summary>
/// <remarks>
/// A program that inserts a row moves the cell, its defined name and its tag together, and all three agree. A script that moves cells and not
/// names leaves the tag with the cell; a program that drops names leaves the tag as well. So the tag in the row's first column decides, and
/// the name and the dealt place say where to look for it.
/// </remarks>
internal sealed class CellFinder
{
    private readonly WorkbookSnapshot _workbook;

    public CellFinder(WorkbookSnapshot workbook) => _workbook = workbook;

    /// <summary>Where the cell is now; where it was dealt if there is no trace of it.</summary>
    public CellAddress Find(string definedName, CellAddress dealt, string tag)
    {
        var named = CellReference.OfName(_workbook, definedName);
        if (named is { } there && HasTag(there, tag)) return there;
        var sheet = _workbook.FindSheet((named ?? dealt).Sheet) ?? _workbook.FindSheet(dealt.Sheet);
        return TaggedRow(sheet, tag) is { } row
            ? new CellAddress(sheet!.Name, row, dealt.Column)
            : named ?? dealt;
    }

    private bool HasTag(CellAddress cell, string tag) =>
        Tag(_workbook.Find(new(cell.Sheet, cell.Row, PracticeColumns.Tag))) is { } found && IsTag(found, tag);

    /// <summary>The one row of the sheet that carries the tag; null if none or several do.</summary>
    private static int? TaggedRow(SheetSnapshot? sheet, string tag)
    {
        if (sheet is null) return null;
        var rows = sheet.Cells
            .Where(cell => cell.Key.Column == PracticeColumns.Tag && Tag(cell.Value) is { } found && IsTag(found, tag))
            .Select(cell => cell.Key.Row).Take(2).ToList();
        return rows.Count == 1 ? rows[0] : null;
    }

    private static string? Tag(CellContent? content) => content is { Formula: null, Stored: { IsText: true, Text: var text } } ? text : null;

    private static bool IsTag(string found, string tag) => string.Equals(found.Trim(), tag, StringComparison.OrdinalIgnoreCase);
}
