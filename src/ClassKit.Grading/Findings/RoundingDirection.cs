namespace ClassKit.Grading.Findings;

/// <summary>Where a rounding takes what lies between two steps.</summary>
public enum RoundingDirection
{
    /// <summary>To the nearer one, halves away from zero.</summary>
    Nearest,

    /// <summary>To the one above.</summary>
    Up,

    /// <summary>To the one below.</summary>
    Down,

    /// <summary>To the one nearer to zero: other than <see cref="Down"/> below zero only.</summary>
    TowardsZero,
}
