using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Wording.Files;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Content.Sheets;

/// <summary>
/// The rows of a workbook as text. It comes from anywhere, so it is read as what students return is: as a bounded stream, nothing in it
/// followed or run.
/// </summary>
internal static class WorkbookTables
{
    private static readonly string[] Endings = [".xlsx", ".xlsm", ".ods", ".xls"];

    /// <summary>No roster has as many columns; a cell far out to the right is no reason to make room for all before it.</summary>
    private const int MostColumns = 256;

    public static bool IsWorkbook(Source source) => Endings.Contains(Path.GetExtension(source.Path).ToLowerInvariant());

    public static IReadOnlyList<SheetTable>? Read(Source source, ProblemList problems)
    {
        try
        {
            using var stream = source.Library.Tree.Open(source.Path);
            if (ReturnedWorkbookReader.Read(stream, ReadLimits.Practice).TryGet(out var workbook, out var refusal))
                return [.. workbook.Sheets.Select(Table)];
            problems.Add(null, "The workbook cannot be read", $"{RefusalWords.Of(refusal)} Or save the list as CSV.");
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            problems.Add(
                null,
                $"The file cannot be opened: {refused.Message.TrimEnd('.')}",
                "Close it in other programs and check its permissions."
            );
        }
        return null;
    }

    private static SheetTable Table(SheetSnapshot sheet)
    {
        var rows = sheet.Cells.Where(cell => cell.Key.Column <= MostColumns).GroupBy(cell => cell.Key.Row).OrderBy(row => row.Key).ToList();
        var records = rows.Where(row => !sheet.HiddenRows.Contains(row.Key)).Select(Record).Where(record => !record.IsBlank).ToList();
        return new(records) { Sheet = sheet.Name, HiddenRows = rows.Count(row => sheet.HiddenRows.Contains(row.Key)) };
    }

    private static CsvRecord Record(IGrouping<int, KeyValuePair<(int Row, int Column), CellContent>> row)
    {
        var fields = new string[row.Max(cell => cell.Key.Column)];
        Array.Fill(fields, "");
        foreach (var ((_, column), content) in row)
            fields[column - 1] = Text(content.Stored);
        return new(row.Key, fields);
    }

    /// <summary>As the cell shows it: a student's number has no decimal point, and never an exponent.</summary>
    private static string Text(CellValue value) =>
        value switch
        {
            { IsText: true } => value.Text,
            { IsNumber: true } => value.Number.ToString("0.##########", CultureInfo.InvariantCulture),
            _ => "",
        };
}
