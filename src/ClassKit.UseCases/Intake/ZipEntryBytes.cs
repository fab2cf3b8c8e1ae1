using System.IO.Compression;

namespace ClassKit.UseCases;

/// <summary>Unpacks one entry of an archive, whatever its directory claims of it.</summary>
internal static class ZipEntryBytes
{
    /// <summary>The entry as a file, or the reason why not.</summary>
    public static ReturnedItem Read(ZipArchiveEntry entry, string path, ArchiveBudget budget)
    {
        try
        {
            if (entry.IsEncrypted) return ReturnedItem.Refused(path, "The file lies in a zip archive that is protected with a password. Please hand in the workbook itself (.xlsx), not packed.");
            if (entry.Length > IntakeLimits.FileBytes) return ReturnedItem.TooLarge(path, entry.Length);
            if (!budget.TryBytes(Math.Max(0, entry.Length - (IntakeLimits.Ratio * entry.CompressedLength)))) return ReturnedItem.Damaged(path, "Far more comes out of the zip archive that the file lies in than belongs to practice workbooks.");
            using var stream = entry.Open();
            var bytes = new byte[entry.Length];
            var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return read == bytes.Length && stream.ReadByte() < 0
                ? new(path, bytes, null, entry.LastWriteTime.DateTime)
                : ReturnedItem.Damaged(path, "The file is damaged inside its zip archive: its size is not what the archive says.");
        }
        catch (Exception broken) when (broken is InvalidDataException or IOException or NotSupportedException or ArgumentException)
        {
            return ReturnedItem.Damaged(path, "The file is damaged inside its zip archive.");
        }
    }
}
