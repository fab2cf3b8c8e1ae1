namespace ClassKit.Wording.Counts;

/// <summary>What stands above the measurements of one piece after the other, on paper, in workbooks and in forms.</summary>
public static class PieceHeads
{
    private static readonly string[] One = ["Measured"];
    private static readonly string[] Several = ["First", "Second", "Third"];

    /// <summary>Every head, in the order of the pieces.</summary>
    public static IReadOnlyList<string> All { get; } = [.. One, .. Several];

    /// <summary>A head for each piece; one piece alone is no first of several.</summary>
    /// <param name="pieces">How many are measured: 1 to 3.</param>
    public static IReadOnlyList<string> Of(int pieces)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pieces, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(pieces, Several.Length);
        return pieces == 1 ? One : Several[..pieces];
    }
}
