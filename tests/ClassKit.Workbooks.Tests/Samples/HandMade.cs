using System.IO.Compression;
using System.Text;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned;

namespace ClassKit.Workbooks.Tests.Samples;

/// <summary>Workbooks written part by part, for what no library writes on demand.</summary>
internal sealed class HandMade
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Documents = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private readonly Dictionary<string, string> _parts = [];

    /// <summary>A workbook with one sheet "S", given the XML inside its sheetData.</summary>
    public static HandMade Sheet(string rows, string strings = "", string names = "", string workbookProperties = "") =>
        new HandMade()
            .With("_rels/.rels", Relationships(("rId1", "officeDocument", "xl/workbook.xml")))
            .With(
                "xl/workbook.xml",
                $"""<workbook xmlns="{Main}" xmlns:r="{Documents}">{workbookProperties}<sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets><definedNames>{names}</definedNames></workbook>"""
            )
            .With(
                "xl/_rels/workbook.xml.rels",
                Relationships(("rId1", "worksheet", "worksheets/sheet1.xml"), ("rId2", "sharedStrings", "sharedStrings.xml"))
            )
            .With("xl/sharedStrings.xml", $"""<sst xmlns="{Main}">{strings}</sst>""")
            .With("xl/worksheets/sheet1.xml", $"""<worksheet xmlns="{Main}"><sheetData>{rows}</sheetData></worksheet>""");

    public static string Relationships(params (string Id, string Type, string Target)[] relationships) =>
        """<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">"""
        + string.Concat(
            relationships.Select(one => $"""<Relationship Id="{one.Id}" Type="{Documents}/{one.Type}" Target="{one.Target}"/>""")
        )
        + "</Relationships>";

    public HandMade With(string part, string xml)
    {
        _parts[part] = xml;
        return this;
    }

    public HandMade Without(string part)
    {
        _parts.Remove(part);
        return this;
    }

    public HandMade Replace(string part, string found, string replacement) =>
        With(part, _parts[part].Replace(found, replacement, StringComparison.Ordinal));

    public HandMade ReplaceEverywhere(string found, string replacement)
    {
        foreach (var part in _parts.Keys.ToList())
            Replace(part, found, replacement);
        return this;
    }

    public byte[] ToBytes()
    {
        using var package = new MemoryStream();
        using (var archive = new ZipArchive(package, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, xml) in _parts)
            {
                using var stream = archive.CreateEntry(name).Open();
                stream.Write(Encoding.UTF8.GetBytes(xml));
            }
        }

        return package.ToArray();
    }

    /// <summary>Reads the workbook and gives a cell of its sheet "S".</summary>
    public CellContent? Cell(string cell) => Read().Find(At(cell));

    public WorkbookSnapshot Read()
    {
        var reading = ReturnedWorkbookReader.Read(ToBytes());
        Assert.Null(reading.Refusal);
        return reading.Workbook!;
    }

    /// <summary>Reads the workbook, which must be refused.</summary>
    public Refusal Refused()
    {
        var reading = ReturnedWorkbookReader.Read(ToBytes());
        Assert.NotNull(reading.Refusal);
        return reading.Refusal;
    }

    private static CellAddress At(string cell) =>
        CellAddress.TryParse("S", cell, out var address) ? address : throw new ArgumentException(cell);
}
