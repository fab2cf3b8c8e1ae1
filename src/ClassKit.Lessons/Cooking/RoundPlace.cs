namespace ClassKit.Lessons.Cooking;

/// <summary>How many round pieces lie in one round place, such as a steamer's basket.</summary>
/// <remarks>
/// A round of equal rounds: how many times as wide as one of them the outer one has to be is proved or best known for each number (R. L.
/// Graham et al., Discrete Math. 181 (1998) 139; E. W. Weisstein, MathWorld, "Circle Packing").
/// </remarks>
public static class RoundPlace
{
    /// <summary>Two fingers' breadth between two pieces, and half of it at the wall, in millimetres. Common practice, no source.</summary>
    public const double Gap = 30;

    /// <summary>The outer circle's width over that of one of as many as its index and one more.</summary>
    private static readonly double[] Ratios =
    [
        1,
        2,
        2.1547,
        2.4142,
        2.7013,
        3,
        3,
        3.3048,
        3.6131,
        3.8130,
        3.9238,
        4.0296,
        4.2361,
        4.3284,
        4.5214,
        4.6154,
        4.7920,
        4.8637,
        4.8637,
    ];

    /// <summary>How many pieces lie in it with a <see cref="Gap"/> between them; at least 1, at most 19.</summary>
    /// <param name="acrossMillimetres">Of the place, inside; above 0.</param>
    /// <param name="pieceMillimetres">Of a piece at its widest; above 0.</param>
    public static int Holds(double acrossMillimetres, double pieceMillimetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(acrossMillimetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pieceMillimetres);
        var ratio = acrossMillimetres / (pieceMillimetres + Gap);
        return Math.Max(1, Ratios.Count(needed => needed <= ratio));
    }
}
