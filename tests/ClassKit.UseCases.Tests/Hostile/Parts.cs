using System.IO.Compression;
using System.Text;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>A workbook's parts, to be changed one by one and packed again.</summary>
internal sealed class Parts
{
    private readonly SortedDictionary<string, byte[]> _parts;

    private Parts(SortedDictionary<string, byte[]> parts) => _parts = parts;

    public static Parts Of(byte[] workbook)
    {
        using var archive = new ZipArchive(new MemoryStream(workbook));
        var parts = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var entry in archive.Entries)
        {
            using var stream = entry.Open();
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            parts[entry.FullName] = bytes.ToArray();
        }

        return new(parts);
    }

    public IReadOnlyCollection<string> Names => _parts.Keys;

    public string Text(string part) => Encoding.UTF8.GetString(_parts[part]);

    public Parts With(string part, byte[] content) => new(new(_parts, StringComparer.Ordinal) { [part] = content });

    public Parts With(string part, string content) => With(part, Encoding.UTF8.GetBytes(content));

    public Parts Change(string part, Func<string, string> change) => With(part, change(Text(part)));

    public Parts Replace(string part, string found, string replacement)
    {
        var text = Text(part);
        return text.Contains(found, StringComparison.Ordinal)
            ? With(part, text.Replace(found, replacement, StringComparison.Ordinal))
            : throw new ArgumentException($"{part} has no {found}.", nameof(found));
    }

    public byte[] Pack(CompressionLevel level = CompressionLevel.Fastest)
    {
        using var bytes = new MemoryStream();
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            // OpenDocument wants its media type first.
            foreach (var (name, content) in _parts.OrderBy(part => part.Key != "mimetype"))
            {
                using var stream = archive.CreateEntry(name, name == "mimetype" ? CompressionLevel.NoCompression : level).Open();
                stream.Write(content);
            }
        }

        return bytes.ToArray();
    }
}
