namespace ClassKit.Terms.Rules;

/// <summary>How the works of a category count against each other.</summary>
public enum CategoryCounting
{
    /// <summary>Each as much as the next, whatever it is out of.</summary>
    Alike,

    /// <summary>Each by the points that it is out of.</summary>
    ByPoints,
}
