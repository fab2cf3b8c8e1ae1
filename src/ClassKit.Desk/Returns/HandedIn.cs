namespace ClassKit.Desk.Returns;

/// <summary>How files came in that a page sent. Of one that did not come whole nothing is kept.</summary>
/// <param name="New">How many were kept; the same again counts once.</param>
internal abstract record HandedIn(int New)
{
    /// <summary>All of them came.</summary>
    public sealed record Whole(int New) : HandedIn(New);

    /// <summary>What was sent broke off, or was more than may be sent at once.</summary>
    public sealed record BrokenOff(int New) : HandedIn(New);

    /// <summary>One could not be kept: the disk is full, the folder may not be written to, or too many others have its name.</summary>
    /// <param name="New">How many were kept before.</param>
    /// <param name="Why">As the system says it.</param>
    public sealed record NotWritten(int New, string Why) : HandedIn(New);
}
