using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Measured;
using ClassKit.Wording.Counts;
using ClassKit.Workbooks.Returned;

namespace ClassKit.Workbooks.Observations;

/// <summary>
/// Reads a workbook of observations into the fields of its form, whichever program saved it.
/// </summary>
public static class ObservationReader
{
    private const int GuessColumn = 3;

    /// <summary>What was typed in.</summary>
    /// <param name="file">Its bytes, which may be anything.</param>
    /// <param name="form">The form that it must be of.</param>
    public static ObservationReading Read(byte[] file, ObservationForm form)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(form);
        var reading = ReturnedWorkbookReader.Read(file);
        if (reading.Workbook is not { } workbook)
            return new(null) { Refusal = reading.Refusal };
        var sheet = workbook
            .Sheets.OrderBy(one => one.Name == ObservedWords.Sheet ? 0 : 1)
            .FirstOrDefault(one => one.Cells.Values.Any(cell => cell.Stored.ToString() == ObservedWords.Form));
        if (sheet is null)
            return new(null);
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        Put(fields, ObservationForm.Team, Beside(sheet, ObservedWords.Team));
        LessonFormula? bread = null;
        IReadOnlyList<int> pieces = [];
        foreach (var row in sheet.Cells.Keys.Select(cell => cell.Row).Distinct().Order())
        {
            var label = Text(sheet, row, 1);
            if (form.Breads.FirstOrDefault(one => one.Formula.Title == label) is { } begun)
                bread = begun;
            if (Columns(sheet, row) is { Count: > 0 } heads)
                pieces = heads;
            if (bread is null)
                continue;
            foreach (var measure in form.Typed(bread).Where(measure => ObservedWords.Of(measure, bread.IsOvenBread) == label))
            foreach (var (at, column) in Columns(measure, pieces, form.PiecesOf(bread, measure)).Index())
                Put(fields, ObservationForm.Field(bread, measure, at + 1), Text(sheet, row, column));
        }
        return new(Beside(sheet, ObservedWords.Form)) { Fields = fields };
    }

    /// <summary>A guess stands before what is expected, all else below the heads.</summary>
    private static IEnumerable<int> Columns(Measure measure, IReadOnlyList<int> pieces, int count) =>
        measure == Measure.GuessedHeight ? [GuessColumn] : pieces.Take(count);

    private static List<int> Columns(SheetSnapshot sheet, int row) =>
        [
            .. PieceHeads
                .All.Select(head =>
                    sheet
                        .Cells.Where(cell => cell.Key.Row == row && cell.Value.Stored.ToString() == head)
                        .Select(cell => cell.Key.Column)
                        .DefaultIfEmpty(0)
                        .Min()
                )
                .Where(column => column > 0),
        ];

    private static string Text(SheetSnapshot sheet, int row, int column) =>
        (sheet.Cells.GetValueOrDefault((row, column))?.Stored ?? CellValue.Blank).ToString().Trim();

    private static string Beside(SheetSnapshot sheet, string label) =>
        sheet
            .Cells.Where(cell => cell.Value.Stored.ToString() == label)
            .OrderBy(cell => cell.Key.Row)
            .Select(cell => Text(sheet, cell.Key.Row, cell.Key.Column + 1))
            .FirstOrDefault()
        ?? "";

    private static void Put(Dictionary<string, string> fields, string name, string text)
    {
        if (text.Length > 0)
            fields[name] = text;
    }
}
