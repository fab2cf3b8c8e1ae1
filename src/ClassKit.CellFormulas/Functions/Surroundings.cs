using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>What cells and sheets are, apart from their values (OpenFormula 1.3, 6.13), and links.</summary>
internal static class Surroundings
{
    public static readonly FunctionRow[] Rows =
    [
        new("ISFORMULA", 1, 1, "R", call =>
            call.Area(0) is { } area ? call.Cells.FormulaText(area.Sheet, area.Top, area.Left) is not null : CellError.Value
        ),
        new("FORMULATEXT", 1, 1, "R", FormulaText),
        new("SHEET", 0, 1, "R", Sheet),
        new("SHEETS", 0, 1, "R", call => call.IsMissing(0) ? call.Cells.SheetCount
            : call.Value(0).Reference is { } reference ? reference.Areas.Select(area => area.Sheet).Distinct().Count()
            : CellError.Value),
        new("HYPERLINK", 1, 2, "VV", call => CellResult.Of(call.Scalar(0) is var link && call.IsMissing(1) ? link : call.Any(1))),
    ];

    private static FormulaValue FormulaText(Call call)
    {
        if (call.Area(0) is not { } area)
            return CellError.Value;
        return call.Cells.FormulaText(area.Sheet, area.Top, area.Left) is { } text ? "=" + text : CellError.NotAvailable;
    }

    /// <summary>The place of a sheet among all, from 1 on: of the one referred to or named, or the formula's own.</summary>
    private static FormulaValue Sheet(Call call)
    {
        if (call.IsMissing(0))
            return call.Cells.SheetIndex(null) + 1;
        if (call.Value(0).Reference is { } reference)
            return reference.First.Sheet + 1;
        var name = call.Text(0);
        if (call.Failed)
            return call.Failure;
        return call.Cells.SheetIndex(name) is var at and >= 0 ? at + 1 : CellError.NotAvailable;
    }
}
