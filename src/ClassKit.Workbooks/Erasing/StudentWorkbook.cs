using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Returned;

namespace ClassKit.Workbooks.Erasing;

/// <summary>What a workbook says of one student; any bytes may come in.</summary>
/// <param name="IsPractice">True of a workbook of practice, whoever's it is.</param>
/// <param name="IsTheirs">True of the student's own practice.</param>
/// <param name="IsNamed">True if the student is named in any cell.</param>
public sealed record StudentWorkbook(bool IsPractice, bool IsTheirs, bool IsNamed)
{
    private readonly WorkbookSnapshot? _workbook;

    private StudentWorkbook(WorkbookSnapshot workbook, bool isPractice, bool isTheirs, bool isNamed)
        : this(isPractice, isTheirs, isNamed) => _workbook = workbook;

    /// <summary>Reads one; null for bytes that are no workbook.</summary>
    public static StudentWorkbook? Read(byte[] file, SoughtStudent sought)
    {
        ArgumentNullException.ThrowIfNull(sought);
        if (ReturnedWorkbookReader.Read(file).Workbook is not { } workbook)
            return null;
        var texts = workbook.Sheets.SelectMany(Texts).Select(cell => cell.Text).ToHashSet();
        var isPractice = texts.Contains(StartPlan.StudentIdLabel);
        return new(
            workbook,
            isPractice,
            isPractice
                && texts.Contains(sought.Who.Id)
                && !sought.Others.Any(other => other.Id != sought.Who.Id && texts.Contains(other.Id)),
            texts.Any(sought.IsNamedIn) && !sought.IsOfNamesake(texts)
        );
    }

    /// <summary>The student's rows, by sheet; sheets without any are left out.</summary>
    public IReadOnlyDictionary<string, IReadOnlySet<int>> Rows(SoughtStudent sought) =>
        (_workbook?.Sheets ?? [])
            .Select(sheet => (sheet.Name, Rows: StudentRows.Of(Texts(sheet), sought)))
            .Where(sheet => sheet.Rows.Count > 0)
            .ToDictionary(sheet => sheet.Name, sheet => sheet.Rows);

    private static List<(int Row, int Column, string Text)> Texts(SheetSnapshot sheet) =>
        [.. sheet.Cells.Where(cell => cell.Value.Stored.IsText).Select(cell => (cell.Key.Row, cell.Key.Column, cell.Value.Stored.Text))];
}
