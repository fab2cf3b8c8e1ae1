namespace ClassKit.Pages.Benches;

/// <summary>One line of a run sheet.</summary>
/// <param name="Minute">When, since the beginning of the class.</param>
/// <param name="What">What to do, in a few words.</param>
/// <param name="Bread">Of which bread; empty where it is of none.</param>
/// <param name="Until">When it is over; null for a moment.</param>
/// <param name="Note">Which oven, what it takes, what to mind; may be empty.</param>
/// <param name="IsWork">True if hands are needed; otherwise it goes on by itself.</param>
public sealed record RunEntry(int Minute, string What, string Bread, int? Until, string Note, bool IsWork)
{
    /// <summary>
    /// True if something goes through an oven's door then: it takes a moment, and nothing is put right that was put in late.
    /// </summary>
    public bool IsAtDoor { get; init; }

    /// <summary>True of what comes out of an oven, which is done before that is set to anything else.</summary>
    public bool IsOut { get; init; }

    /// <summary>True of switching something on or off, which comes behind all else of its minute.</summary>
    public bool IsSwitch { get; init; }

    /// <summary>How many pairs of hands it takes; 0 where none, or where it is not said.</summary>
    public int Hands { get; init; }
}
