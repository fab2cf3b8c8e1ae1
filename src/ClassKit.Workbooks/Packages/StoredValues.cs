using System.Xml.Linq;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Packages;

/// <summary>
/// What every formula of a workbook comes to, to be stored beside it: programs which show workbooks without calculating them then show
/// numbers.
/// </summary>
internal sealed class StoredValues
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private readonly WorkbookEvaluator? _evaluator;
    private readonly IReadOnlyDictionary<string, string> _sheets;

    private StoredValues(WorkbookEvaluator? evaluator, IReadOnlyDictionary<string, string> sheets) =>
        (_evaluator, _sheets) = (evaluator, sheets);

    /// <summary>No values: formulas are left for spreadsheet programs to compute.</summary>
    public static StoredValues None { get; } = new(null, new Dictionary<string, string>());

    /// <summary>The values of a workbook that this program made itself, however large the class that it is about.</summary>
    public static StoredValues Of(byte[] package)
    {
        var workbook = ReturnedWorkbookReader.Read(package, ReadLimits.Own).Workbook
            ?? throw new ArgumentException("Values can only be put into a workbook.", nameof(package));
        return new(
            new(workbook),
            PackageParts.SheetParts(package).ToDictionary(sheet => sheet.Value, sheet => sheet.Key, StringComparer.Ordinal)
        );
    }

    /// <summary>Puts the value of a cell's formula into it. A formula that we cannot evaluate stays without one.</summary>
    /// <param name="part">The part of the cell's sheet.</param>
    /// <param name="cell">The cell.</param>
    public void PutInto(string part, XElement cell)
    {
        if (_evaluator is null || cell.Element(Main + "f") is null)
            return;
        if (!CellAddress.TryParse(_sheets[part], (string?)cell.Attribute("r"), out var address))
            return;
        var evaluation = _evaluator.Evaluate(address);
        if (evaluation.Status == EvaluationStatus.Computed)
            Store(cell, evaluation.Value);
    }

    private static void Store(XElement cell, CellValue value)
    {
        cell.SetAttributeValue(
            "t",
            value.Kind switch
            {
                CellValueKind.Text => "str",
                CellValueKind.Logical => "b",
                CellValueKind.Error => "e",
                CellValueKind.Blank or CellValueKind.Number => null,
            }
        );
        cell.SetElementValue(
            Main + "v",
            value.Kind switch
            {
                // A formula that comes to an empty cell shows 0.
                CellValueKind.Blank => "0",
                CellValueKind.Logical => value.Logical ? "1" : "0",
                CellValueKind.Number or CellValueKind.Text or CellValueKind.Error => value.ToString(),
            }
        );
    }
}
