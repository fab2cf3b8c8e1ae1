using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Differential;

/// <summary>
/// The least of an .xlsx that another program can read and that can be read back from it. Written by hand, so that formulas reach the file
/// just as they are.
/// </summary>
internal static class XlsxFile
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly XNamespace Relation = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static readonly XNamespace Package = "http://schemas.openxmlformats.org/package/2006/relationships";
    private static readonly XNamespace Types = "http://schemas.openxmlformats.org/package/2006/content-types";

    public static byte[] Write(WorkbookSnapshot workbook)
    {
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
            Write(zip, workbook);
        return file.ToArray();
    }

    private static void Write(ZipArchive zip, WorkbookSnapshot workbook)
    {
        var sheets = workbook.Sheets.Select((sheet, at) => (Sheet: sheet, Number: at + 1)).ToList();
        const string Base = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
        Put(
            zip,
            "[Content_Types].xml",
            new XElement(
                Types + "Types",
                new XElement(
                    Types + "Default",
                    new XAttribute("Extension", "rels"),
                    new XAttribute("ContentType", "application/vnd.openxmlformats-package.relationships+xml")
                ),
                new XElement(Types + "Default", new XAttribute("Extension", "xml"), new XAttribute("ContentType", "application/xml")),
                new XElement(
                    Types + "Override",
                    new XAttribute("PartName", "/xl/workbook.xml"),
                    new XAttribute("ContentType", Base + "sheet.main+xml")
                ),
                sheets.Select(sheet => new XElement(
                    Types + "Override",
                    new XAttribute("PartName", $"/xl/worksheets/sheet{sheet.Number}.xml"),
                    new XAttribute("ContentType", Base + "worksheet+xml")
                ))
            )
        );
        Put(zip, "_rels/.rels", Relationships([("rId1", "officeDocument", "xl/workbook.xml")]));
        Put(
            zip,
            "xl/_rels/workbook.xml.rels",
            Relationships(sheets.Select(sheet => ($"rId{sheet.Number}", "worksheet", $"worksheets/sheet{sheet.Number}.xml")))
        );
        Put(
            zip,
            "xl/workbook.xml",
            new XElement(
                Main + "workbook",
                new XElement(
                    Main + "sheets",
                    sheets.Select(sheet => new XElement(
                        Main + "sheet",
                        new XAttribute("name", sheet.Sheet.Name),
                        new XAttribute("sheetId", sheet.Number),
                        new XAttribute(Relation + "id", $"rId{sheet.Number}")
                    ))
                ),
                workbook.Names.Count == 0
                    ? null
                    : new XElement(
                        Main + "definedNames",
                        workbook.Names.Select(name => new XElement(Main + "definedName", new XAttribute("name", name.Name), name.Formula))
                    )
            )
        );
        foreach (var (sheet, number) in sheets)
            Put(zip, $"xl/worksheets/sheet{number}.xml", Sheet(sheet));
    }

    public static Dictionary<CellAddress, CellValue> ReadValues(byte[] file)
    {
        using var zip = new ZipArchive(new MemoryStream(file), ZipArchiveMode.Read);
        var strings = zip.GetEntry("xl/sharedStrings.xml") is null
            ? []
            : Load(zip, "xl/sharedStrings.xml")
                .Elements(Main + "si")
                .Select(item => string.Concat(item.Descendants(Main + "t").Select(text => text.Value)))
                .ToList();
        var targets = Load(zip, "xl/_rels/workbook.xml.rels")
            .Elements(Package + "Relationship")
            .ToDictionary(one => one.Attribute("Id")!.Value, one => one.Attribute("Target")!.Value);
        var values = new Dictionary<CellAddress, CellValue>();
        foreach (var sheet in Load(zip, "xl/workbook.xml").Element(Main + "sheets")!.Elements())
        {
            var name = sheet.Attribute("name")!.Value;
            foreach (var cell in Load(zip, "xl/" + targets[sheet.Attribute(Relation + "id")!.Value]).Descendants(Main + "c"))
            {
                if (
                    cell.Element(Main + "v")?.Value is not { } text
                    || !CellAddress.TryParse(name, cell.Attribute("r")!.Value, out var address)
                )
                    continue;
                values[address] = cell.Attribute("t")?.Value switch
                {
                    "s" => CellValue.FromText(strings[int.Parse(text, CultureInfo.InvariantCulture)]),
                    "str" => CellValue.FromText(text),
                    "b" => CellValue.FromLogical(text == "1"),
                    "e" => CellErrorText.TryParse(text, out var error) ? CellValue.FromError(error) : CellValue.FromText(text),
                    _ => CellValue.FromNumber(double.Parse(text, CultureInfo.InvariantCulture)),
                };
            }
        }

        return values;
    }

    private static XElement Relationships(IEnumerable<(string Id, string Type, string Target)> relations) =>
        new(
            Package + "Relationships",
            relations.Select(relation => new XElement(
                Package + "Relationship",
                new XAttribute("Id", relation.Id),
                new XAttribute("Type", $"{Relation.NamespaceName}/{relation.Type}"),
                new XAttribute("Target", relation.Target)
            ))
        );

    private static XElement Sheet(SheetSnapshot sheet) =>
        new(
            Main + "worksheet",
            new XElement(
                Main + "sheetData",
                sheet
                    .Cells.GroupBy(cell => cell.Key.Row)
                    .OrderBy(row => row.Key)
                    .Select(row => new XElement(
                        Main + "row",
                        new XAttribute("r", row.Key),
                        row.OrderBy(cell => cell.Key.Column).Select(cell => Cell(new("", cell.Key.Row, cell.Key.Column), cell.Value))
                    ))
            )
        );

    private static XElement Cell(CellAddress address, CellContent content)
    {
        var cell = new XElement(Main + "c", new XAttribute("r", address.Cell));
        if (content.Formula is { } formula)
        {
            cell.Add(
                new XElement(
                    Main + "f",
                    content.ArrayRange is null ? null : new XAttribute("t", "array"),
                    content.ArrayRange is null ? null : new XAttribute("ref", content.ArrayRange),
                    formula
                )
            );
            return cell;
        }

        var value = content.Stored;
        switch (value.Kind)
        {
            case CellValueKind.Number:
                cell.Add(new XElement(Main + "v", value.Number.ToString("R", CultureInfo.InvariantCulture)));
                break;
            case CellValueKind.Text:
                cell.Add(
                    new XAttribute("t", "inlineStr"),
                    new XElement(Main + "is", new XElement(Main + "t", new XAttribute(XNamespace.Xml + "space", "preserve"), value.Text))
                );
                break;
            case CellValueKind.Logical:
                cell.Add(new XAttribute("t", "b"), new XElement(Main + "v", value.Logical ? "1" : "0"));
                break;
            case CellValueKind.Error:
                cell.Add(new XAttribute("t", "e"), new XElement(Main + "v", CellErrorText.Of(value.Error)));
                break;
        }

        return cell;
    }

    private static void Put(ZipArchive zip, string path, XElement root)
    {
        using var stream = zip.CreateEntry(path).Open();
        new XDocument(root).Save(stream);
    }

    private static XElement Load(ZipArchive zip, string path)
    {
        using var stream = zip.GetEntry(path)!.Open();
        return XDocument.Load(stream, LoadOptions.PreserveWhitespace).Root!;
    }
}
