using System.IO.Compression;
using System.Text;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>
/// Every part of both kinds of workbook, each missing, empty, another one's, twice, cut off, nested, declared and encoded in ways that no
/// program writes.
/// </summary>
internal static class PartKinds
{
    public static IEnumerable<HostileFile> Files => Of("xlsx", Corpus.Workbook).Concat(Of("ods", Corpus.OpenDocument));

    private static IEnumerable<HostileFile> Of(string ending, byte[] workbook)
    {
        var parts = Parts.Of(workbook);
        return parts.Names.SelectMany(part =>
            Ways(parts, part).Select(way => new HostileFile($"{part.Replace('/', '-')} {way.Name}.{ending}", way.Make))
        );
    }

    private static IEnumerable<(string Name, Func<byte[]> Make)> Ways(Parts parts, string part)
    {
        var others = parts.Names.Where(other => other != part).ToList();
        string Text() => parts.Text(part);
        return
        [
            ("missing", () => Zip.Of(others.Select(other => (other, Encoding.UTF8.GetBytes(parts.Text(other)))))),
            ("empty", () => parts.With(part, "").Pack()),
            ("of bytes", () => parts.With(part, [0, 1, 2, 255, 254]).Pack()),
            ("only declared", () => parts.With(part, "<?xml version=\"1.0\"?>").Pack()),
            .. others.Select(other =>
                ((string, Func<byte[]>))($"holds {other.Replace('/', '-')}", () => parts.With(part, parts.Text(other)).Pack())
            ),
            ("twice", () => Twice(parts, part, "")),
            ("twice with another", () => Twice(parts, part, parts.Text(others[0]))),
            .. Enumerable
                .Range(1, 4)
                .Select(at =>
                    ((string, Func<byte[]>))($"cut at {at} fifths", () => parts.With(part, Text()[..(Text().Length * at / 5)]).Pack())
                ),
            ("in UTF-16", () => parts.With(part, [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(Text())]).Pack()),
            ("in UTF-32", () => parts.With(part, [.. Encoding.UTF32.GetPreamble(), .. Encoding.UTF32.GetBytes(Text())]).Pack()),
            ("in bytes that are no text", () => parts.With(part, [.. Encoding.UTF8.GetBytes(Text()), 0xC3, 0x28, 0xFF]).Pack()),
            ("with lone halves of characters", () =>
                parts.With(part, Text().Replace("</", "&#xD800;&#xDC00;_xD83D_</", StringComparison.Ordinal)).Pack()
            ),
            ("with zeros", () => parts.With(part, Text().Replace(">", ">\0", StringComparison.Ordinal)).Pack()),
            ("with entities", () => parts.With(part, "<!DOCTYPE a [<!ENTITY a \"b\">]>" + Text()).Pack()),
            ("with an unknown entity", () => parts.With(part, Text().Replace("</", "&nothing;</", StringComparison.Ordinal)).Pack()),
            ("nested", () => parts.With(part, new StringBuilder().Insert(0, "<a>", 200_000).Append(Text()).ToString()).Pack()),
            ("without its spaces of names", () => parts.With(part, Text().Replace("xmlns", "xmlnz", StringComparison.Ordinal)).Pack()),
            ("with every number huge", () =>
                parts
                    .With(part, System.Text.RegularExpressions.Regex.Replace(Text(), "(?<=[\">])[0-9]+(?=[\"<])", "99999999999999999999"))
                    .Pack()
            ),
            ("with every number below zero", () =>
                parts.With(part, System.Text.RegularExpressions.Regex.Replace(Text(), "(?<=[\">])[0-9]+(?=[\"<])", "-1")).Pack()
            ),
            ("with every attribute empty", () =>
                parts.With(part, System.Text.RegularExpressions.Regex.Replace(Text(), "(?<= [a-zA-Z]+=)\"[^\"]*\"", "\"\"")).Pack()
            ),
        ];
    }

    private static byte[] Twice(Parts parts, string part, string other) =>
        Zip.Of(
            Encoding.UTF8,
            CompressionLevel.Fastest,
            parts.Names.Select(name => (name, Encoding.UTF8.GetBytes(parts.Text(name)))).Prepend((part, Encoding.UTF8.GetBytes(other)))
        );
}
