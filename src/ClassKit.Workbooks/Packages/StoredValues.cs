using System.Xml.Linq;
using ClassKit.CellFormulas;

namespace ClassKit.Workbooks;

/// <summary>Stores beside every formula what it comes to, so that programs which show workbooks without calculating them show numbers.</summary>
internal static class StoredValues
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>The same package with values. A formula that we cannot evaluate stays without one.</summary>
    public static byte[] PutInto(byte[] package)
    {
        var workbook = ReturnedWorkbookReader.Read(package).Workbook
            ?? throw new ArgumentException("Values can only be put into a workbook.", nameof(package));
        var evaluator = new WorkbookEvaluator(workbook);
        var parts = PackageParts.Read(package);
        foreach (var (sheet, part) in PackageParts.SheetParts(package))
        {
            var xml = PartXml.Load(parts[part]);
            foreach (var cell in xml.Descendants(Main + "c").Where(cell => cell.Element(Main + "f") is not null))
            {
                if (!CellAddress.TryParse(sheet, (string?)cell.Attribute("r"), out var address)) continue;
                var evaluation = evaluator.Evaluate(address);
                if (evaluation.Status == EvaluationStatus.Computed) Store(cell, evaluation.Value);
            }

            parts[part] = PartXml.Save(xml);
        }

        return PackageParts.Write(parts);
    }

    private static void Store(XElement cell, CellValue value)
    {
        cell.SetAttributeValue("t", value.Kind switch
        {
            CellValueKind.Text => "str",
            CellValueKind.Logical => "b",
            CellValueKind.Error => "e",
            CellValueKind.Blank or CellValueKind.Number => null,
        });
        cell.SetElementValue(Main + "v", value.Kind switch
        {
            // A formula that comes to an empty cell shows 0.
            CellValueKind.Blank => "0",
            CellValueKind.Logical => value.Logical ? "1" : "0",
            CellValueKind.Number or CellValueKind.Text or CellValueKind.Error => value.ToString(),
        });
    }
}
