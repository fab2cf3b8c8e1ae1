using System.Text;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>
/// XML that does what XML may and a workbook's never does: entities, depth, breadth, encodings, styles that lead back to themselves.
/// </summary>
internal static class XmlTricks
{
    private const string Laughs =
        """<!DOCTYPE a [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;"><!ENTITY d "&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;">]>""";
    private const string Outside = """<!DOCTYPE a [<!ENTITY a SYSTEM "file:///etc/passwd">]>""";
    private const string Parameter = """<!DOCTYPE a [<!ENTITY % a SYSTEM "http://example.org/a.dtd"> %a;]>""";

    private static readonly string[] Read = ["_rels/.rels", "xl/workbook.xml", "xl/_rels/workbook.xml.rels", "xl/worksheets/sheet2.xml"];

    /// <summary>The same tricks in one part after the other.</summary>
    public static IEnumerable<HostileFile> InEveryPart =>
        [
            .. from part in Read
            from doctype in new[] { Laughs, Outside, Parameter }
            select new HostileFile(
                $"entities {doctype.Length} in {part}",
                () => Sheets.Parts.Change(part, xml => AfterDeclaration(xml, doctype)).Pack(),
                true
            ),
            .. Read.Append("docProps/core.xml")
                .Select(part => new HostileFile($"ten million levels in {part}", () =>
                    Sheets.Parts.Change(part, xml => BeforeEnd(xml, new StringBuilder().Insert(0, "<a>", 10_000_000).ToString())).Pack()
                )),
            .. Read.Select(part => new HostileFile($"a hundred thousand levels, closed, in {part}", () =>
                Sheets
                    .Parts.Change(part, xml =>
                        BeforeEnd(
                            xml,
                            new StringBuilder().Insert(0, "<a>", 100_000).Append(new StringBuilder().Insert(0, "</a>", 100_000)).ToString()
                        )
                    )
                    .Pack()
            )),
            .. Read.Select(part => new HostileFile($"an attribute of 60 MB in {part}", () =>
                Sheets.Parts.Change(part, xml => BeforeEnd(xml, $"<a b=\"{new string('x', 60_000_000)}\"/>")).Pack()
            )),
            .. Read.Select(part => new HostileFile($"two million attributes in {part}", () =>
                Sheets
                    .Parts.Change(part, xml =>
                        BeforeEnd(xml, "<a" + string.Concat(Enumerable.Range(0, 2_000_000).Select(at => $" a{at}=''")) + "/>")
                    )
                    .Pack()
            )),
            .. Read.Select(part => new HostileFile($"three million names in {part}", () =>
                Sheets
                    .Parts.Change(part, xml => BeforeEnd(xml, string.Concat(Enumerable.Range(0, 3_000_000).Select(at => $"<a{at}/>"))))
                    .Pack()
            )),
        ];

    public static IEnumerable<HostileFile> Files =>
        [
            new("a name of 30 MB", () => Sheets.WithRows($"<{new string('n', 30_000_000)}/>")),
            new("a comment of 60 MB", () => Sheets.WithRows($"<!--{new string('c', 60_000_000)}-->")),
            new("instructions without end", () => Sheets.WithRows($"<?a {new string('c', 60_000_000)}")),
            new("a thousand spaces of names", () =>
                Sheets.WithRows("<a" + string.Concat(Enumerable.Range(0, 100_000).Select(at => $" xmlns:n{at}='urn:{at}'")) + "/>")
            ),
            new("UTF-16 that says UTF-8", () =>
                Sheets.Parts.With(Sheets.Sheet, Encoding.Unicode.GetBytes(Sheets.Parts.Text(Sheets.Sheet))).Pack()
            ),
            new("UTF-16 with its mark", () =>
                Sheets
                    .Parts.With(
                        Sheets.Sheet,
                        [
                            .. Encoding.Unicode.GetPreamble(),
                            .. Encoding.Unicode.GetBytes(
                                "<?xml version=\"1.0\" encoding=\"utf-16\"?>" + Undeclared(Sheets.Parts.Text(Sheets.Sheet))
                            ),
                        ]
                    )
                    .Pack()
            ),
            new("UTF-7", () =>
                Sheets.Parts.Change(Sheets.Sheet, xml => "<?xml version=\"1.0\" encoding=\"utf-7\"?>" + Undeclared(xml)).Pack()
            ),
            new("an encoding that nobody knows", () =>
                Sheets.Parts.Change(Sheets.Sheet, xml => "<?xml version=\"1.0\" encoding=\"klingon\"?>" + Undeclared(xml)).Pack()
            ),
            new("XML 1.1", () => Sheets.Parts.Change(Sheets.Sheet, xml => "<?xml version=\"1.1\"?>" + Undeclared(xml)).Pack()),
            new("broken surrogates", () =>
                Sheets.WithRows("<row r=\"900\"><c r=\"A900\" t=\"inlineStr\"><is><t>&#xD800;&#xDFFF;_xD83D_\u0001</t></is></c></row>")
            ),
            new("styles that lead back to themselves", () =>
                Sheets.Parts.Change("xl/styles.xml", xml => xml.Replace("xfId=\"0\"", "xfId=\"1\"", StringComparison.Ordinal)).Pack()
            ),
            new("styles that are not there", () =>
                Sheets.WithRows("<row r=\"900\"><c r=\"A900\" s=\"4294967295\"><v>1</v></c><c r=\"B900\" s=\"-1\"><v>1</v></c></row>")
            ),
            new("no styles at all", () => Sheets.Parts.With("xl/styles.xml", "").Pack()),
            new("markup of alternate content", () =>
                Sheets.WithRows(
                    "<mc:AlternateContent xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\"><mc:Choice Requires=\"x\"><row r=\"900\"><c r=\"A900\"><v>1</v></c></row></mc:Choice></mc:AlternateContent>"
                )
            ),
            new("cells within cells", () =>
                Sheets.WithRows("<row r=\"900\"><c r=\"A900\"><c r=\"B900\"><v>1</v><c><v>2</v></c></c></c></row>")
            ),
            new("a root element of another kind", () => Sheets.Parts.With(Sheets.Sheet, "<html><body>login</body></html>").Pack()),
            new("an empty sheet part", () => Sheets.Parts.With(Sheets.Sheet, "").Pack(), true),
            new("two roots", () => Sheets.Parts.Change(Sheets.Sheet, xml => xml + Undeclared(xml)).Pack(), true),
        ];

    private static string AfterDeclaration(string xml, string what)
    {
        var end = xml.StartsWith("<?xml", StringComparison.Ordinal) ? xml.IndexOf("?>", StringComparison.Ordinal) + 2 : 0;
        return xml[..end] + what + xml[end..];
    }

    private static string BeforeEnd(string xml, string what)
    {
        var end = xml.LastIndexOf("</", StringComparison.Ordinal);
        return xml[..end] + what + xml[end..];
    }

    private static string Undeclared(string xml) =>
        xml.StartsWith("<?xml", StringComparison.Ordinal)
            ? xml[(xml.IndexOf("?>", StringComparison.Ordinal) + 2)..]
            : xml.TrimStart('\uFEFF');
}
