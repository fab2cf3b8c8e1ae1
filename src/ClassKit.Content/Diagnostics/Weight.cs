namespace ClassKit.Content.Diagnostics;

/// <summary>How much something that is said of content stands in the way; what blocks is said first.</summary>
public enum Weight
{
    /// <summary>Nothing can be made of it until it is mended.</summary>
    Blocks,

    /// <summary>Something can be made of it, and it is most likely not what was meant.</summary>
    Doubtful,

    /// <summary>Good to know.</summary>
    Noted,

    /// <summary>As its author most likely meant it, and said to whoever asks what was made of it.</summary>
    Fine,
}
