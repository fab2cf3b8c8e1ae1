using System.IO.Compression;
using System.Text;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>Archives for tests.</summary>
internal static class Zip
{
    public static byte[] Of(params IEnumerable<(string Name, byte[] Content)> files) => Of(Encoding.UTF8, CompressionLevel.Fastest, files);

    public static byte[] Of(Encoding names, CompressionLevel level, params IEnumerable<(string Name, byte[] Content)> files)
    {
        using var bytes = new MemoryStream();
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true, names))
        {
            foreach (var (name, content) in files)
            {
                var entry = archive.CreateEntry(name, level);
                entry.LastWriteTime = new(2026, 3, 2, 10, 0, 0, TimeSpan.Zero);
                using var stream = entry.Open();
                stream.Write(content);
            }
        }

        return bytes.ToArray();
    }

    /// <summary>An archive whose entries claim to be encrypted.</summary>
    public static byte[] Encrypted(params IEnumerable<(string Name, byte[] Content)> files)
    {
        var bytes = Of(files);
        SetFlag(bytes, "PK\u0003\u0004"u8, 6);
        SetFlag(bytes, "PK\u0001\u0002"u8, 8);
        return bytes;
    }

    private static void SetFlag(byte[] bytes, ReadOnlySpan<byte> header, int offset)
    {
        for (var at = 0; bytes.AsSpan(at).IndexOf(header) is >= 0 and var next; at += next + 4)
            bytes[at + next + offset] |= 1;
    }
}
