using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;
using ClassKit.Wording.Files;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Inspecting;

/// <summary>Recomputes every formula of a workbook and compares with what the file has stored.</summary>
public static class InspectWorkbook
{
    private const double RelativeAgreement = 1e-9;

    private const int MostBytes = int.MaxValue / 2;

    private const string Remedy = "Name an .xlsx workbook.";

    /// <summary>The workbook at a path, or why there is none.</summary>
    public static Reading<InspectRequest> At(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return File.Exists(path)
            ? new(new(new(path, () => File.OpenRead(path))), [])
            : new(null, [new(path, null, "There is no such file", Remedy)]);
    }

    /// <summary>Reads and inspects an .xlsx file.</summary>
    /// <returns>What was found, or why the file cannot be read.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<Inspection> Run(InspectRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var workbook = request.Workbook;
        Reading<Inspection> Refused(string why) => new(null, [new(workbook.Path, null, why, Remedy)]);
        try
        {
            using var stream = workbook.Open();
            if (BoundedBytes.Read(stream, MostBytes) is not { } bytes)
                return Refused("It is larger than any workbook that can be inspected");
            var reading = ReturnedWorkbookReader.Read(bytes);
            return reading.Workbook is { } snapshot
                ? new(new(workbook.Path, Inspect(snapshot, run)), [])
                : Refused(RefusalWords.Of(reading.Refusal!).TrimEnd('.'));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return Refused($"It cannot be read: {failure.Message}");
        }
    }

    /// <summary>All cells at once, so that what one needed is known for the next.</summary>
    private static List<InspectedSheet> Inspect(WorkbookSnapshot workbook, Run run)
    {
        var formulas = workbook
            .Sheets.SelectMany(sheet =>
                sheet
                    .Cells.Where(cell => cell.Value.Formula is not null)
                    .OrderBy(cell => cell.Key.Row)
                    .ThenBy(cell => cell.Key.Column)
                    .Select(cell => (Address: new CellAddress(sheet.Name, cell.Key.Row, cell.Key.Column), Content: cell.Value))
            )
            .ToList();
        var evaluations = new WorkbookEvaluator(workbook).EvaluateAll(
            run.Each(RunStep.Recomputing, formulas).Select(formula => formula.Address),
            cancellation: run.Cancellation
        );
        var cells = formulas
            .Zip(evaluations, (formula, evaluation) => (formula.Address.Sheet, Cell: Inspect(formula.Address, formula.Content, evaluation)))
            .ToLookup(cell => cell.Sheet, cell => cell.Cell);
        return [.. workbook.Sheets.Select(sheet => new InspectedSheet(sheet.Name, [.. cells[sheet.Name]]))];
    }

    private static InspectedCell Inspect(CellAddress address, CellContent content, Evaluation evaluation) =>
        new(
            address.Cell,
            "=" + content.Formula,
            content.Stored,
            evaluation.Value,
            Compare(content.Stored, evaluation),
            evaluation.Status == EvaluationStatus.Computed ? null : evaluation.Reason
        );

    private static InspectionResult Compare(CellValue stored, Evaluation evaluation) =>
        evaluation.Status switch
        {
            EvaluationStatus.Unsupported => InspectionResult.Unsupported,
            EvaluationStatus.Volatile => InspectionResult.Volatile,
            EvaluationStatus.Computed when stored.IsBlank => InspectionResult.NoStoredValue,
            EvaluationStatus.Computed => Agree(stored, evaluation.Value) ? InspectionResult.Agree : InspectionResult.Differ,
        };

    private static bool Agree(CellValue stored, CellValue computed) =>
        (stored, computed) switch
        {
            ({ IsNumber: true, Number: var left }, { IsNumber: true, Number: var right }) => Math.Abs(left - right)
                <= RelativeAgreement * Math.Max(Math.Abs(left), Math.Abs(right)),
            // A formula that gives a blank shows and stores 0.
            ({ IsNumber: true, Number: 0 }, { IsBlank: true }) => true,
            _ => stored == computed,
        };
}
