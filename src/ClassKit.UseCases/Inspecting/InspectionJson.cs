using ClassKit.UseCases.Output;
using ClassKit.Wording.Formulas;

namespace ClassKit.UseCases.Inspecting;

/// <summary>What <c>classkit inspect --json</c> prints.</summary>
public static class InspectionJson
{
    /// <summary>The JSON text.</summary>
    public static string Write(Inspection inspection)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        return JsonStyle.Write(
            new
            {
                inspection.File,
                Sheets = inspection.Sheets.Select(sheet => new
                {
                    sheet.Name,
                    Cells = sheet.Cells.Select(cell => new
                    {
                        cell.Cell,
                        cell.Formula,
                        Stored = PlainValue.Of(cell.Stored),
                        Computed = PlainValue.Of(cell.Computed),
                        Result = Word(cell.Result),
                        Reason = cell.Reason is { } reason ? ObstacleWords.Of(reason) : null,
                    }),
                }),
                Summary = new
                {
                    inspection.Formulas,
                    Agree = inspection.Count(InspectionResult.Agree),
                    Differ = inspection.Count(InspectionResult.Differ),
                    Unsupported = inspection.Count(InspectionResult.Unsupported),
                },
            },
            JsonStyle.Options
        );
    }

    /// <summary>The word that files and tables use for a result.</summary>
    public static string Word(InspectionResult result) =>
        result switch
        {
            InspectionResult.Agree => "agree",
            InspectionResult.Differ => "differ",
            InspectionResult.Unsupported => "unsupported",
            InspectionResult.NoStoredValue => "no-stored-value",
            InspectionResult.Volatile => "volatile",
        };
}
