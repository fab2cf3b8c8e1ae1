namespace ClassKit.UseCases.Inspecting;

/// <summary>What the grader sees in a workbook.</summary>
/// <param name="File">As named by the user.</param>
/// <param name="Sheets">Every sheet, also those without formulas.</param>
public sealed record Inspection(string File, IReadOnlyList<InspectedSheet> Sheets)
{
    /// <summary>How many formula cells came out so.</summary>
    public int Count(InspectionResult result) => Sheets.Sum(sheet => sheet.Cells.Count(cell => cell.Result == result));

    /// <summary>How many formula cells there are.</summary>
    public int Formulas => Sheets.Sum(sheet => sheet.Cells.Count);
}
