using System.IO.Compression;
using System.Text;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>Small files that unpack or unfold to far more than a machine holds.</summary>
internal static class Bombs
{
    private const int Megabyte = 1024 * 1024;

    private static readonly string[] Read =
    [
        "_rels/.rels",
        "xl/workbook.xml",
        "xl/_rels/workbook.xml.rels",
        "xl/sharedStrings.xml",
        "xl/worksheets/sheet2.xml",
        "docProps/core.xml",
        "[Content_Types].xml",
        "xl/styles.xml",
    ];

    public static IEnumerable<HostileFile> Files =>
        [
            .. Read.Select(part => new HostileFile($"spaces in {part}", () =>
                Sheets
                    .Parts.With(part, Blown(Sheets.Parts.Names.Contains(part) ? Sheets.Parts.Text(part) : "<a></a>", ' '))
                    .Pack(CompressionLevel.SmallestSize)
            )),
            .. Read.Select(part => new HostileFile($"zeros in place of {part}", () =>
                Sheets.Parts.With(part, new byte[100 * Megabyte]).Pack(CompressionLevel.SmallestSize)
            )),
            new("a text of 60 MB", () => Texts("<si><t>" + new string('x', 60 * Megabyte) + "</t></si>"), true),
            new(
                "a text of 60 MB in a section of its own",
                () => Texts("<si><t><![CDATA[" + new StringBuilder().Insert(0, "<x>", 20 * Megabyte) + "]]></t></si>"),
                true
            ),
            new("five million empty texts", () => Texts(new StringBuilder().Insert(0, "<si/>", 5_000_000).ToString())),
            new("two thousand texts of 32,767 characters", () =>
                Texts(new StringBuilder().Insert(0, "<si><t>" + new string('x', 32_767) + "</t></si>", 1_900).ToString())
            ),
            new("a text in a million runs", () => Texts("<si>" + new StringBuilder().Insert(0, "<r><t>x</t></r>", 1_000_000) + "</si>")),
            new(
                "a hundred thousand entries",
                () => Zip.Of([("xl/workbook.xml", [1]), .. Enumerable.Range(0, 100_000).Select(at => ($"{at}", Array.Empty<byte>()))]),
                true
            ),
            new(
                "names of 60,000 letters",
                () =>
                    Zip.Of([
                        ("[Content_Types].xml", [1]),
                        .. Enumerable.Range(0, 300).Select(at => ($"{at}" + new string('n', 60_000), Array.Empty<byte>())),
                    ]),
                true
            ),
            new("the same entry over and over", () => Overlapping(3_000), true),
            new(
                "zip in zip in zip",
                () => Enumerable.Range(0, 12).Aggregate(Corpus.Workbook, (inner, _) => Zip.Of(("a.zip", inner))),
                true
            ),
            new(
                "zips of zips of zips",
                () =>
                    Enumerable
                        .Range(0, 4)
                        .Aggregate(new byte[Megabyte], (inner, _) => Zip.Of(Enumerable.Range(0, 12).Select(at => ($"{at}.zip", inner)))),
                true
            ),
            new("ten times 45 MB", () => Zip.Of(Enumerable.Range(0, 10).Select(at => ($"{at}.xlsx", new byte[45 * Megabyte]))), true),
            new("a million rows that hold nothing", () =>
                Sheets.WithRows(string.Concat(Enumerable.Range(1_000, 1_000_000).Select(row => $"<row r=\"{row}\" hidden=\"1\"/>")))
            ),
            new("a million cells", () => Sheets.WithRows(Sheets.Rows(10_000, 100, (_, _) => "><v>1</v>")), true),
            new("a million cells with a look and nothing else", () => Sheets.WithRows(Sheets.Rows(10_000, 100, (_, _) => " s=\"1\">"))),
            new(
                "a million merged ranges",
                () =>
                    Sheets.Behind(
                        "<mergeCells>"
                            + string.Concat(Enumerable.Range(1, 1_000_000).Select(row => $"<mergeCell ref=\"A{row}:B{row}\"/>"))
                            + "</mergeCells>"
                    ),
                true
            ),
            new(
                "a quarter of a million names",
                () =>
                    Sheets
                        .Parts.Replace(
                            Sheets.Workbook,
                            "</definedNames>",
                            string.Concat(Enumerable.Range(1, 250_000).Select(at => $"<definedName name=\"n{at}\">1</definedName>"))
                                + "</definedNames>"
                        )
                        .Pack(),
                true
            ),
            new("nine thousand names for 8,000 characters", () =>
                Sheets
                    .Parts.Replace(
                        Sheets.Workbook,
                        "</definedNames>",
                        string.Concat(
                            Enumerable.Range(1, 7_500).Select(at => $"<definedName name=\"n{at}\">{new string('1', 8_000)}</definedName>")
                        ) + "</definedNames>"
                    )
                    .Pack()
            ),
            new(
                "ten thousand sheets",
                () =>
                    Sheets
                        .Parts.Replace(
                            Sheets.Workbook,
                            "</sheets>",
                            string.Concat(
                                Enumerable.Range(100, 10_000).Select(at => $"<sheet name=\"s{at}\" sheetId=\"{at}\" r:id=\"rId1\"/>")
                            ) + "</sheets>"
                        )
                        .Pack(),
                true
            ),
            new("a million relationships", () =>
                Sheets
                    .Parts.Replace(
                        "xl/_rels/workbook.xml.rels",
                        "</Relationships>",
                        string.Concat(
                            Enumerable.Range(100, 600_000).Select(at => $"<Relationship Id=\"r{at}\" Type=\"x\" Target=\"y{at}\"/>")
                        ) + "</Relationships>"
                    )
                    .Pack()
            ),
            new("a hundred sheets that are all the same part", () =>
                Sheets
                    .Parts.Replace(
                        Sheets.Workbook,
                        "</sheets>",
                        string.Concat(Enumerable.Range(100, 200).Select(at => $"<sheet name=\"s{at}\" sheetId=\"{at}\" r:id=\"rId2\"/>"))
                            + "</sheets>"
                    )
                    .Pack()
            ),
        ];

    private static byte[] Texts(string items)
    {
        const string part = "xl/sharedStrings.xml";
        return Sheets
            .Parts.With(part, $"<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">{items}</sst>")
            .Pack(CompressionLevel.SmallestSize);
    }

    /// <summary>A part with a hundred megabytes of one character before its last element.</summary>
    private static string Blown(string xml, char with)
    {
        var end = xml.LastIndexOf("</", StringComparison.Ordinal);
        return xml[..end] + new string(with, 100 * Megabyte) + xml[end..];
    }

    /// <summary>An archive whose directory lists one entry, under many names, again and again.</summary>
    private static byte[] Overlapping(int times)
    {
        var one = Zip.Of(("xl/worksheets/sheet2.xml", new byte[10 * Megabyte]));
        var directory = one.AsSpan().LastIndexOf("PK\u0001\u0002"u8);
        var end = one.AsSpan().LastIndexOf("PK\u0005\u0006"u8);
        var entry = one[directory..end];
        byte[] tail = one[end..];
        BitConverter.TryWriteBytes(tail.AsSpan(8), (ushort)times);
        BitConverter.TryWriteBytes(tail.AsSpan(10), (ushort)times);
        BitConverter.TryWriteBytes(tail.AsSpan(12), entry.Length * times);
        return [.. one[..directory], .. Enumerable.Repeat(entry, times).SelectMany(bytes => bytes), .. tail];
    }
}
