using System.IO.Compression;

namespace ClassKit.UseCases.Intake;

/// <summary>Unpacks one entry of an archive, whatever its directory claims of it.</summary>
internal static class ZipEntryBytes
{
    /// <summary>The entry as a file, or the reason why not.</summary>
    /// <remarks>The library that unpacks throws many things over archives that contradict themselves; all of them mean that.</remarks>
    public static ReturnedItem Read(ZipArchiveEntry entry, string path, ArchiveBudget budget) =>
        Attempt.Of(() => Unpack(entry, path, budget), _ => ReturnedItem.Damaged(path, "The file is damaged inside its zip archive."));

    private static ReturnedItem Unpack(ZipArchiveEntry entry, string path, ArchiveBudget budget)
    {
        if (entry.IsEncrypted) return ReturnedItem.Refused(path, "The file lies in a zip archive that is protected with a password. Please hand in the workbook itself (.xlsx), not packed.");

        // Zip64 has room for sizes that no machine has, and for some that turn out below zero here.
        if (entry.Length < 0 || entry.CompressedLength < 0) return ReturnedItem.Damaged(path, "The file is damaged inside its zip archive: the archive gives it a size that no file has.");
        if (entry.Length > IntakeLimits.FileBytes) return ReturnedItem.TooLarge(path, entry.Length);
        if (!budget.TryBytes(Math.Max(0, entry.Length - (IntakeLimits.Ratio * Math.Min(entry.CompressedLength, entry.Length))))) return ReturnedItem.Damaged(path, "Far more comes out of the zip archive that the file lies in than belongs to practice workbooks.");
        using var stream = entry.Open();
        var bytes = new byte[entry.Length];
        var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return read == bytes.Length && stream.ReadByte() < 0
            ? new(path, bytes, null, entry.LastWriteTime.DateTime)
            : ReturnedItem.Damaged(path, "The file is damaged inside its zip archive: its size is not what the archive says.");
    }
}
