using System.IO.Compression;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>The parts of a returned workbook's zip archive, unpacked one at a time within limits.</summary>
internal sealed class Package : IDisposable
{
    private readonly ZipArchive _archive;
    private readonly Dictionary<string, ZipArchiveEntry> _parts = new(StringComparer.OrdinalIgnoreCase);
    private long _unpacked;

    private Package(ZipArchive archive, ReadLimits limits)
    {
        _archive = archive;
        Limits = limits;
    }

    /// <summary>How much is read.</summary>
    public ReadLimits Limits { get; }

    /// <summary>The names of all parts.</summary>
    public IReadOnlyCollection<string> Parts => _parts.Keys;

    public static Package Open(byte[] file, ReadLimits limits)
    {
        if (!ZipDirectory.IsWithin(file, limits.Entries, limits.DirectoryBytes))
            throw RefusalException.TooLarge(Excess.Parts, limits.Entries);
        var package = new Package(OpenArchive(file), limits);
        try
        {
            package.List();
            return package;
        }
        catch
        {
            package.Dispose();
            throw;
        }
    }

    public bool Has(string part) => _parts.ContainsKey(part);

    /// <summary>Opens a part; null if there is none of that name.</summary>
    public PartStream? TryOpen(string part)
    {
        if (!_parts.TryGetValue(part, out var entry))
            return null;
        if (entry.IsEncrypted)
            throw new RefusalException(new Refusal.PasswordProtected());
        return new PartStream(part, entry.Open(), entry.CompressedLength, entry.Crc32, Limits, Count);
    }

    public void Dispose() => _archive.Dispose();

    private static ZipArchive OpenArchive(byte[] file)
    {
        try
        {
            return new(new MemoryStream(file, writable: false), ZipArchiveMode.Read);
        }
        catch (InvalidDataException)
        {
            // The list of entries stands at the end of a zip archive: without it, the end is missing.
            throw new RefusalException(new Refusal.CutOff());
        }
    }

    private void List()
    {
        foreach (var entry in _archive.Entries)
            _parts.TryAdd(entry.FullName.Replace('\\', '/').TrimStart('/'), entry);
    }

    private void Count(int bytes)
    {
        _unpacked += bytes;
        if (_unpacked > Limits.UnpackedBytes)
            throw RefusalException.TooLarge(Excess.UnpackedMegabytes, Limits.UnpackedBytes / 1024 / 1024);
    }
}
