namespace ClassKit.Records.Storage;

/// <summary>Why a record cannot be opened, read or written, as a fact.</summary>
public abstract record RecordTrouble
{
    private RecordTrouble() { }

    /// <summary>There is no file.</summary>
    public sealed record Missing : RecordTrouble;

    /// <summary>There is a file already where a new record is to begin.</summary>
    public sealed record Occupied : RecordTrouble;

    /// <summary>It is a file of something else.</summary>
    public sealed record Foreign : RecordTrouble;

    /// <summary>A later version of the program wrote it.</summary>
    /// <param name="Version">The version of its tables.</param>
    /// <param name="Known">The latest that this program knows.</param>
    public sealed record Newer(int Version, int Known) : RecordTrouble;

    /// <summary>The end of the file is missing.</summary>
    /// <param name="Bytes">Its length.</param>
    /// <param name="Expected">The length that its beginning states; 0 where not even that is whole.</param>
    public sealed record Truncated(long Bytes, long Expected) : RecordTrouble;

    /// <summary>Something wrote over parts of it.</summary>
    /// <param name="What">As the database says it.</param>
    public sealed record Damaged(string What) : RecordTrouble;

    /// <summary>Somebody else is writing.</summary>
    /// <param name="Writer">Who and what, as they left word; null if they did not.</param>
    public sealed record Busy(string? Writer) : RecordTrouble;

    /// <summary>There is no room left on the disk.</summary>
    public sealed record Full : RecordTrouble;

    /// <summary>The system lets nobody at the file.</summary>
    /// <param name="What">As the system says it.</param>
    public sealed record Unreachable(string What) : RecordTrouble;
}
