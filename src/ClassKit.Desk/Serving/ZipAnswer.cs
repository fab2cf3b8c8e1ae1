using System.IO.Compression;

namespace ClassKit.Desk.Serving;

/// <summary>Several files to keep, as one zip.</summary>
internal static class ZipAnswer
{
    /// <summary>Without times of their own, so that the same files make the same zip.</summary>
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Answers with the files.</summary>
    /// <param name="visit">The request.</param>
    /// <param name="name">What the zip is called.</param>
    /// <param name="files">Names in the zip, and what is in them.</param>
    public static Task Of(Visit visit, string name, IEnumerable<(string Name, Func<byte[]> Content)> files)
    {
        using var packed = new MemoryStream();
        using (var zip = new ZipArchive(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (file, content) in files)
            {
                var entry = zip.CreateEntry(file, CompressionLevel.Fastest);
                entry.LastWriteTime = NoTime;
                using var stream = entry.Open();
                stream.Write(content());
            }
        }
        return visit.Download(name, "application/zip", packed.ToArray());
    }
}
