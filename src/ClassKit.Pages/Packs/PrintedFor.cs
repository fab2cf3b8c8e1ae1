namespace ClassKit.Pages.Packs;

/// <summary>For whom a page of a pack is printed.</summary>
public enum PrintedFor
{
    /// <summary>Once for the class.</summary>
    Class,

    /// <summary>Once for each team.</summary>
    EachTeam,

    /// <summary>Once for each student.</summary>
    EachStudent,
}
