using System.IO.Compression;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.UseCases.Intake;

/// <summary>Unpacks one entry of an archive, whatever its directory claims of it.</summary>
internal static class ZipEntryBytes
{
    /// <summary>The entry as a file, or the reason why not.</summary>
    /// <remarks>The library that unpacks throws many things over archives that contradict themselves; all of them mean that.</remarks>
    public static ReturnedItem Read(ZipArchiveEntry entry, string path, ArchiveBudget budget) =>
        Guarded.Of(() => Unpack(entry, path, budget), _ => ReturnedItem.Packed(path, PackingFault.DamagedInside));

    private static ReturnedItem Unpack(ZipArchiveEntry entry, string path, ArchiveBudget budget)
    {
        if (entry.IsEncrypted)
            return ReturnedItem.Packed(path, PackingFault.Password);

        // Zip64 has room for sizes that no machine has, and for some that turn out below zero here.
        if (entry.Length < 0 || entry.CompressedLength < 0)
            return ReturnedItem.Packed(path, PackingFault.ImpossibleSize);
        if (entry.Length > IntakeLimits.FileBytes)
            return ReturnedItem.TooLarge(path, entry.Length);
        if (!budget.TryBytes(Math.Max(0, entry.Length - (IntakeLimits.Ratio * Math.Min(entry.CompressedLength, entry.Length)))))
            return ReturnedItem.Packed(path, PackingFault.Bomb);
        using var stream = entry.Open();
        var bytes = new byte[entry.Length];
        var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return read == bytes.Length && stream.ReadByte() < 0
            ? new(path, bytes, null, entry.LastWriteTime.DateTime)
            : ReturnedItem.Packed(path, PackingFault.OtherSize);
    }
}
