using ClassKit.UseCases.Inspecting;
using ClassKit.Wording.Formulas;

namespace ClassKit.Cli.Reporting;

/// <summary>An inspection at a glance: a line a formula cell, then the counts.</summary>
internal static class InspectionTable
{
    private const int MostWidth = 44;

    public static void Write(TextWriter output, Inspection inspection)
    {
        foreach (var sheet in inspection.Sheets.Where(sheet => sheet.Cells.Count > 0))
        {
            output.WriteLine(sheet.Name);
            var rows = sheet
                .Cells.Select(cell =>
                    new[]
                    {
                        cell.Cell,
                        Shorten(cell.Formula),
                        Shorten(cell.Stored.ToString()),
                        Shorten(cell.Computed.ToString()),
                        InspectionJson.Word(cell.Result) + (cell.Reason is { } reason ? $" ({ObstacleWords.Of(reason)})" : ""),
                    }
                )
                .Prepend(["cell", "formula", "stored", "computed", "result"])
                .ToList();
            var widths = Enumerable.Range(0, 4).Select(column => rows.Max(row => row[column].Length)).ToList();
            foreach (var row in rows)
                output.WriteLine(
                    (
                        "  " + string.Join("  ", row.Take(4).Select((text, column) => text.PadRight(widths[column]))) + "  " + row[4]
                    ).TrimEnd()
                );
            output.WriteLine();
        }
        output.WriteLine(
            $"{inspection.Formulas} formulas: {inspection.Count(InspectionResult.Agree)} agree, {inspection.Count(InspectionResult.Differ)} differ, "
                + $"{inspection.Count(InspectionResult.Unsupported)} unsupported, {inspection.Count(InspectionResult.NoStoredValue)} without a stored value, {inspection.Count(InspectionResult.Volatile)} volatile."
        );
    }

    private static string Shorten(string text) => text.Length <= MostWidth ? text : text[..(MostWidth - 1)] + "…";
}
