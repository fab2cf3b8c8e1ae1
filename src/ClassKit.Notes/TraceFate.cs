namespace ClassKit.Notes;

/// <summary>What became of the files that name a student who is erased.</summary>
public enum TraceFate
{
    /// <summary>They are as they were, and nobody asked for more.</summary>
    Untouched,

    /// <summary>The student would be taken out of them.</summary>
    Asked,

    /// <summary>The student was taken out of them.</summary>
    Gone,
}
