using System.Text;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>
/// Names that archives can give and file systems cannot, or that say one thing and show another. Whatever the name, the work in it is good.
/// </summary>
internal static class ArchiveNames
{
    private static readonly string[] Names =
    [
        "..",
        ".",
        "a//b.xlsx",
        "/etc/ada.xlsx",
        "..\\..\\ada.xlsx",
        "C:\\ada.xlsx",
        "\\\\server\\share\\ada.xlsx",
        "CON",
        "nul.xlsx",
        "ada.xlsx.",
        "ada.xlsx ",
        "a<b>|?*:\".xlsx",
        "ada\u202Exslx.exe",
        "\u2066ada\u2069\u2069\u2069.xlsx",
        "\u200Fada.xlsx",
        "עדה.xlsx",
        "آدا.xlsx",
        "ada\n.xlsx",
        "ada\r\n\t.xlsx",
        "\u001B[2Jada.xlsx",
        "ada\u0000.xlsx",
        "\uFFFEada.xlsx",
        "ada\u0301.xlsx",
        "𓀀.xlsx",
        new('n', 300),
        new string('n', 60_000) + ".xlsx",
        string.Join('/', Enumerable.Repeat("d", 5_000)) + "/ada.xlsx",
        "%2e%2e%2fada.xlsx",
        "=?utf-8?B?////?=.xlsx",
        "=HYPERLINK(\"http://example.org\").xlsx",
        "<script>alert(1)</script>.xlsx",
        "{popovers.height}.xlsx",
    ];

    public static IEnumerable<HostileFile> Files =>
        [
            .. Names.Select((name, at) => new HostileFile($"a name {at}.zip", () => Zip.Of((name, Corpus.Workbook)))),
            .. new[] { 437, 850, 932, 1251, 28591, 65001 }.Select(page => new HostileFile($"a name in code page {page}.zip", () =>
                Zip.Of(Page(page), System.IO.Compression.CompressionLevel.Fastest, ("Ádá Bérg é.xlsx", Corpus.Workbook))
            )),
            new("bytes that are no text, marked as text.zip", () => Marked(Zip.Of(("aaaa.xlsx", Corpus.Workbook)))),
            new("one name many times.zip", () => Zip.Of(Enumerable.Repeat(("ada.xlsx", Corpus.Workbook), 50))),
            new("many names for one file.zip", () => Zip.Of(Enumerable.Range(0, 50).Select(at => ($"{at}.xlsx", Corpus.Workbook)))),
            new("names that differ in letters only.zip", () =>
                Zip.Of(("ADA.xlsx", Corpus.Workbook), ("ada.xlsx", Corpus.Workbook), ("Ada.XLSX", Corpus.Workbook))
            ),
        ];

    private static Encoding Page(int page) => CodePagesEncodingProvider.Instance.GetEncoding(page) ?? Encoding.GetEncoding(page);

    /// <summary>Says that names are UTF-8 and makes them what is not.</summary>
    private static byte[] Marked(byte[] archive)
    {
        for (var at = archive.AsSpan().IndexOf("aaaa"u8); at >= 0; at = archive.AsSpan().IndexOf("aaaa"u8))
            new byte[] { 0xFF, 0xC3, 0x28, 0xED }.CopyTo(archive, at);
        foreach (var (signature, flags) in new[] { ("PK\u0003\u0004", 7), ("PK\u0001\u0002", 9) })
            archive[archive.AsSpan().IndexOf(Encoding.ASCII.GetBytes(signature)) + flags] |= 0x08;
        return archive;
    }
}
