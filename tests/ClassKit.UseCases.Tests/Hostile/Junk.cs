using System.Text;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>Files that are no workbook, or only begin as one.</summary>
internal static class Junk
{
    private static readonly byte[] Compound = [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];

    public static IEnumerable<HostileFile> Files =>
        [
            new("nothing.xlsx", () => [], true),
            new("one byte.xlsx", () => [0x50], true),
            new("two bytes.xlsx", () => [0x50, 0x4B], true),
            new("zeros.xlsx", () => new byte[8_192], true),
            new("40 MB of zeros.xlsx", () => new byte[40 * 1024 * 1024], true),
            new("60 MB of zeros.xlsx", () => new byte[60 * 1024 * 1024], true),
            .. Enumerable.Range(0, 8).Select(seed => new HostileFile($"noise {seed}.xlsx", () => Noise(seed, 20_000), true)),
            .. Enumerable
                .Range(0, 8)
                .Select(seed => new HostileFile(
                    $"noise that begins as an archive {seed}.xlsx",
                    () => [0x50, 0x4B, 3, 4, .. Noise(seed, 20_000)],
                    true
                )),
            .. Enumerable
                .Range(0, 4)
                .Select(seed => new HostileFile(
                    $"noise that ends as an archive {seed}.xlsx",
                    () => [0x50, 0x4B, 3, 4, .. Noise(seed, 20_000), .. Corpus.Workbook[^22..]],
                    true
                )),
            new("an archive of one directory.xlsx", () => Corpus.Workbook[^22..], true),
            new("a program before the archive.xlsx", () => [.. "MZ"u8, .. Noise(1, 1_000), .. Corpus.Workbook], true),
            new("a program behind the archive.xlsx", () => [.. Corpus.Workbook, .. Noise(1, 1_000)]),
            new("an archive behind an archive.xlsx", () => [.. Corpus.Workbook, .. Corpus.Workbook]),
            new("an old workbook.xls", () => [.. Compound, .. new byte[504], .. Encoding.Unicode.GetBytes("Workbook\0")], true),
            new(
                "a protected workbook.xlsx",
                () => [.. Compound, .. new byte[504], .. Encoding.Unicode.GetBytes("EncryptedPackage\0")],
                true
            ),
            new("30 MB of an old file.xls", () => [.. Compound, .. Noise(2, 30 * 1024 * 1024)], true),
            new("table.csv", () => Encoding.UTF8.GetBytes("part;answer\n1a;780\n"), true),
            new("30 MB of text.csv", () => Encoding.UTF8.GetBytes(new string('7', 30 * 1024 * 1024)), true),
            new("page.pdf", () => [.. "%PDF-1.7\n"u8, .. Noise(3, 10_000)], true),
            new("IMG_0001.jpg", () => [0xFF, 0xD8, 0xFF, 0xE0, .. Noise(4, 10_000)], true),
            new("IMG_0002.heic", () => [0, 0, 0, 24, .. "ftypheic"u8, .. Noise(5, 10_000)], true),
            new("packed.rar", () => [.. "Rar!"u8, .. Noise(6, 10_000)], true),
            new("a password on the archive.zip", () => Zip.Encrypted(("ada.xlsx", Corpus.Workbook)), true),
            new(
                "a password on the parts.xlsx",
                () =>
                    Zip.Encrypted([
                        .. Parts
                            .Of(Corpus.Workbook)
                            .Names.Select(name => (name, Encoding.UTF8.GetBytes(Parts.Of(Corpus.Workbook).Text(name)))),
                    ]),
                true
            ),
        ];

    private static byte[] Noise(int seed, int length)
    {
        var bytes = new byte[length];
        new Random(seed).NextBytes(bytes);
        return bytes;
    }
}
