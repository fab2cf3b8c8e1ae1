namespace ClassKit.Terms.Rules;

/// <summary>Where a result goes that lies in the middle between two steps.</summary>
public enum TieRule
{
    /// <summary>To the upper.</summary>
    Up,

    /// <summary>To the lower.</summary>
    Down,

    /// <summary>To the even one.</summary>
    Even,
}
