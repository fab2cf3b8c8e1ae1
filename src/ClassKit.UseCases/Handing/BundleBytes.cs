using System.IO.Compression;
using System.Text;

namespace ClassKit.UseCases.Handing;

/// <summary>Writes a bundle: a zip of which every byte follows from its files.</summary>
/// <remarks>
/// Nothing is packed smaller, since programs pack in their own ways, and every file bears the earliest day that a zip can hold (PKWARE's
/// APPNOTE 6.3.10, 4.4.6).
/// </remarks>
internal static class BundleBytes
{
    /// <summary>What tells a person who meets the file without us.</summary>
    public const string ReadMe = "README.md";

    private static readonly DateTimeOffset Earliest = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] Of(IEnumerable<(string Path, byte[] Content)> files, string lesson, string title)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(
                zip,
                ReadMe,
                Encoding.UTF8.GetBytes(
                    $"# {title}\n\nA lesson with all that it leads to. ClassKit opens it into a new folder and checks it; any program that opens a zip will do too. The lesson is in `{(lesson.Length > 0 ? lesson : ".")}`.\n"
                )
            );
            foreach (var (path, content) in files)
                Add(zip, path, content);
        }
        return bytes.ToArray();
    }

    private static void Add(ZipArchive zip, string path, byte[] content)
    {
        var entry = zip.CreateEntry(path, CompressionLevel.NoCompression);
        entry.LastWriteTime = Earliest;
        entry.ExternalAttributes = 0;
        using var stream = entry.Open();
        stream.Write(content);
    }
}
