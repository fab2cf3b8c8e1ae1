using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>Parts and pointers that lead out of the package, nowhere, or in a circle.</summary>
internal static class PathTricks
{
    private static readonly string[] Targets =
    [
        "../../../../../../etc/passwd",
        "/etc/passwd",
        "file:///etc/passwd",
        "http://example.org/sheet.xml",
        "\\\\server\\share\\sheet.xml",
        "C:\\sheet.xml",
        "..%2f..%2f..%2fetc%2fpasswd",
        "%00",
        "",
        ".",
        "..",
        "/",
        "sheet2.xml#here",
        "workbook.xml",
        "_rels/workbook.xml.rels",
        "worksheets/sheet2.xml/../../workbook.xml",
        "%zz",
        "CON",
        "sharedStrings.xml",
    ];

    public static IEnumerable<HostileFile> Files =>
        [
            .. Targets.Select(
                (target, at) =>
                    new HostileFile($"a sheet that lies at target {at}", () =>
                        Sheets
                            .Parts.Replace(
                                "xl/_rels/workbook.xml.rels",
                                "worksheets/sheet2.xml",
                                System.Security.SecurityElement.Escape(target)
                            )
                            .Pack()
                    )
            ),
            .. Targets.Select(
                (target, at) =>
                    new HostileFile($"a workbook that lies at target {at}", () =>
                        Sheets.Parts.Replace("_rels/.rels", "xl/workbook.xml", System.Security.SecurityElement.Escape(target)).Pack()
                    )
            ),
            new("entries with ways out", () =>
                Zip.Of(
                    ("../../../../tmp/classkit-was-here.xlsx", Corpus.Workbook),
                    ("/tmp/classkit-was-here.xlsx", Corpus.Workbook),
                    ("..\\..\\classkit-was-here.xlsx", Corpus.Workbook)
                )
            ),
            new("parts twice, in other letters", () => Sheets.Parts.With("XL/WORKSHEETS/SHEET2.XML", "<worksheet/>").Pack()),
            new("a part with a zero in its name", () => Sheets.Parts.With("xl/worksheets/sheet2.xml\0.txt", "x").Pack()),
            new("a sheet that is a link outside", () =>
                Sheets
                    .Parts.Change("xl/_rels/workbook.xml.rels", xml =>
                        xml.Replace(
                            "Target=\"worksheets/sheet2.xml\"",
                            "Target=\"file:///etc/passwd\" TargetMode=\"External\"",
                            StringComparison.Ordinal
                        )
                    )
                    .Pack()
            ),
            new("no relationships", () =>
                Sheets.Parts.With("_rels/.rels", "<Relationships/>").With("xl/_rels/workbook.xml.rels", "<Relationships/>").Pack()
            ),
            new("a hundred main parts", () =>
                Sheets
                    .Parts.Change("_rels/.rels", xml =>
                        xml.Replace(
                            "</Relationships>",
                            string.Concat(
                                Enumerable
                                    .Range(0, 100)
                                    .Select(at => $"<Relationship Id=\"m{at}\" Type=\"http://x/officeDocument\" Target=\"nowhere{at}\"/>")
                            ) + "</Relationships>",
                            StringComparison.Ordinal
                        )
                    )
                    .Pack()
            ),
        ];
}
