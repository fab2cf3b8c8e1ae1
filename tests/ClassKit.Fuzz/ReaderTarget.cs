using System.IO.Compression;
using System.Text;
using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Workbooks.Returned;

namespace ClassKit.Fuzz;

/// <summary>Reading a workbook whose parts were changed never throws, and what is read evaluates.</summary>
internal sealed class ReaderTarget : ITarget
{
    private const char Separator = '\u2063';
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Documents = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private static readonly EvaluationLimits Limits = new(Steps: 100_000, ArrayCells: 100_000, AllSteps: 500_000);

    private static readonly (string Name, string Xml)[] Parts =
    [
        (
            "_rels/.rels",
            $"""<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="{Documents}/officeDocument" Target="xl/workbook.xml"/></Relationships>"""
        ),
        (
            "xl/workbook.xml",
            $"""<workbook xmlns="{Main}" xmlns:r="{Documents}"><workbookPr date1904="0"/><sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets><definedNames><definedName name="flour" localSheetId="0">S!$A$1</definedName></definedNames><calcPr iterate="0"/></workbook>"""
        ),
        (
            "xl/_rels/workbook.xml.rels",
            $"""<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="{Documents}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="{Documents}/sharedStrings" Target="sharedStrings.xml"/></Relationships>"""
        ),
        (
            "xl/sharedStrings.xml",
            $"""<sst xmlns="{Main}" count="2" uniqueCount="2"><si><t xml:space="preserve">flour_x000D_</t></si><si><r><t>wa</t></r><r><rPr><b/></rPr><t>ter</t></r><rPh sb="0" eb="1"><t>x</t></rPh></si></sst>"""
        ),
        (
            "xl/worksheets/sheet1.xml",
            $"""<worksheet xmlns="{Main}"><sheetData><row r="1"><c r="A1"><v>1.5</v></c><c r="B1" t="s"><v>1</v></c><c t="b"><v>1</v></c><c r="D1" t="e"><f>1/0</f><v>#DIV/0!</v></c></row><row r="2" hidden="1"><c r="A2" t="inlineStr"><is><t>rye</t></is></c><c r="B2"><f t="shared" ref="B2:B4" si="0">A2*$A$1+SUM(A$1:A2)</f><v>3</v></c></row><row><c r="B3"><f t="shared" si="0"/><v>4</v></c><c r="C3"><f t="array" ref="C3:C4">A1:A2*2</f><v>3</v></c><c r="D3" t="d"><v>2024-02-29T12:00:00</v></c></row><row r="4"><c r="B4" t="str"><f t="shared" si="0"></f><v>x</v></c><c r="E4"><f t="dataTable" ref="E4:E5" r1="A1"/><v>2</v></c></row></sheetData><autoFilter ref="A1:B4"/></worksheet>"""
        ),
    ];

    private long _read;
    private long _refused;

    public string Summary => $"{_read} read, {_refused} refused";

    public string Mutate(Mutator mutator)
    {
        var parts = Parts.Select(part => part.Xml).ToArray();
        for (var change = 1 + mutator.Below(4); change > 0; change--)
        {
            var at = mutator.Below(10) < 7 ? parts.Length - 1 : mutator.Below(parts.Length);
            parts[at] = Change(mutator, parts[at]);
        }

        return string.Join(Separator, parts);
    }

    public string? Run(string input)
    {
        var parts = input.Split(Separator);
        using var file = new MemoryStream();
        using (var archive = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            for (var at = 0; at < Parts.Length; at++)
            {
                using var stream = archive.CreateEntry(Parts[at].Name, CompressionLevel.NoCompression).Open();
                stream.Write(Encoding.UTF8.GetBytes(at < parts.Length ? parts[at] : ""));
            }
        }

        var reading = ReturnedWorkbookReader.Read(file.ToArray());
        if (reading.Refusal is not null)
        {
            _refused++;
            return null;
        }

        _read++;
        var workbook = reading.Workbook!;
        List<CellAddress> cells =
        [
            .. workbook.Sheets.SelectMany(sheet => sheet.Cells.Keys.Select(key => new CellAddress(sheet.Name, key.Row, key.Column))),
        ];
        _ = new WorkbookEvaluator(workbook, Limits).EvaluateAll(cells);
        return null;
    }

    /// <summary>Changes between marks, so that much of it stays XML: values, attributes, whole elements.</summary>
    private static string Change(Mutator mutator, string xml)
    {
        var marks = Enumerable.Range(0, xml.Length).Where(at => xml[at] is '<' or '>' or '"' or ' ' or '/').ToList();
        if (marks.Count < 2)
            return xml + "<";
        var at = mutator.Below(marks.Count - 1);
        var (from, to) = (marks[at], marks[Math.Min(marks.Count - 1, at + 1 + mutator.Below(6))]);
        return mutator.Below(6) switch
        {
            0 => xml[..(from + 1)] + xml[to..],
            1 => xml[..to] + xml[from..],
            2 => xml[..(from + 1)] + System.Security.SecurityElement.Escape(mutator.Formula()) + xml[(from + 1)..],
            3 => xml[..(from + 1)]
                + mutator.Pick([
                    "0",
                    "-1",
                    "99999999999",
                    "1048577",
                    "XFD1048576",
                    "A0",
                    "NaN",
                    "1E400",
                    "true",
                    "s",
                    "str",
                    "shared",
                    "array",
                    "A1:XFD1048576",
                    "B2:A1",
                    "#N/A",
                    "_xD83D_",
                    "&#xD800;",
                    "&lt;",
                    "\u0001",
                ])
                + xml[to..],
            4 => xml[..from],
            _ => xml[..(from + 1)] + xml[(from + 1)..to] + xml[(from + 1)..to] + xml[to..],
        };
    }
}
