using System.Buffers.Binary;

namespace ClassKit.Records.Storage;

/// <summary>What the first hundred bytes say, read before the database touches the file (SQLite, Database File Format, 1.3).</summary>
internal static class RecordHeader
{
    /// <summary>Marks our files: <c>CkRd</c>.</summary>
    public const int ApplicationId = 0x436B5264;

    private const int Length = 100;
    private const int PageSizeAt = 16;
    private const int ChangesAt = 24;
    private const int PagesAt = 28;
    private const int VersionAt = 60;
    private const int ApplicationAt = 68;
    private const int PagesValidForAt = 92;

    /// <summary>
    /// Why a file is none of our records, or none that this program can read; null for one that may be opened, or has yet to begin.
    /// </summary>
    public static RecordTrouble? Trouble(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        if (file.Length == 0)
            return null;
        Span<byte> header = stackalloc byte[Length];
        var read = file.ReadAtLeast(header, Length, throwOnEndOfStream: false);
        var known = Math.Min(read, Magic.Length);
        if (!header[..known].SequenceEqual(Magic[..known]))
            return new RecordTrouble.Foreign();
        if (read < Length)
            return new RecordTrouble.Truncated(file.Length, 0);
        if (BinaryPrimitives.ReadInt32BigEndian(header[ApplicationAt..]) is var application && application != ApplicationId)
            return application == 0 && (Waits(path) || IsBare(header)) ? null : new RecordTrouble.Foreign();
        if (BinaryPrimitives.ReadInt32BigEndian(header[VersionAt..]) is var version && version > Migrations.Latest)
            return new RecordTrouble.Newer(version, Migrations.Latest);
        return Waits(path) || Expected(header) is not { } expected || file.Length >= expected
            ? null
            : new RecordTrouble.Truncated(file.Length, expected);
    }

    /// <summary>True if committed pages wait beside the file: then its beginning may say less than it holds.</summary>
    private static bool Waits(string path) => new FileInfo(path + "-wal") is { Exists: true, Length: > 0 };

    /// <summary>True if nothing has been written yet: a record whose beginning was cut off.</summary>
    private static bool IsBare(ReadOnlySpan<byte> header) => BinaryPrimitives.ReadUInt32BigEndian(header[PagesAt..]) <= 1;

    private static ReadOnlySpan<byte> Magic => "SQLite format 3\0"u8;

    private static long? Expected(ReadOnlySpan<byte> header)
    {
        if (BinaryPrimitives.ReadUInt32BigEndian(header[ChangesAt..]) != BinaryPrimitives.ReadUInt32BigEndian(header[PagesValidForAt..]))
            return null;
        long size = BinaryPrimitives.ReadUInt16BigEndian(header[PageSizeAt..]);
        return (size == 1 ? 65_536 : size) * BinaryPrimitives.ReadUInt32BigEndian(header[PagesAt..]);
    }
}
