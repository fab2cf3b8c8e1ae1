namespace ClassKit.UseCases.Intake;

/// <summary>Counts what comes out of an archive and of those inside it.</summary>
internal sealed class ArchiveBudget(int entries, long bytes)
{
    private int _entries = entries;
    private long _bytes = bytes;

    /// <summary>For the archive that holds what the whole class returned.</summary>
    public static ArchiveBudget Unbounded => new(int.MaxValue, long.MaxValue);

    /// <summary>For an archive that somebody packed into what was returned.</summary>
    public static ArchiveBudget Bounded => new(IntakeLimits.Entries, IntakeLimits.UnpackedBytes);

    /// <summary>False once there was too much.</summary>
    public bool TryEntry() => --_entries >= 0;

    /// <summary>False once there was too much.</summary>
    public bool TryBytes(long bytes) => (_bytes -= bytes) >= 0;
}
