namespace ClassKit.Content.Rosters;

/// <summary>
/// A cell that says something of every work and something else of single ones: <c>25 %; 50 % for one-tin-three-lifts</c>, <c>Weighing for
/// Bench day one</c>.
/// </summary>
/// <param name="Always">What it says of every work; empty for nothing.</param>
/// <param name="OnlyFor">What it says of single ones.</param>
internal sealed record CellPieces(string Always, IReadOnlyList<(string Value, string Work)> OnlyFor)
{
    private const string For = " for ";

    /// <summary>True if a cell says something of one work alone.</summary>
    public static bool NamesWork(string cell) => cell.Contains(For, StringComparison.OrdinalIgnoreCase);

    /// <summary>The pieces of a cell. Two things said of every work stay together, so that whoever reads them refuses them.</summary>
    public static CellPieces Of(string cell)
    {
        if (!NamesWork(cell))
            return new(cell, []);
        var pieces = cell.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).ToLookup(NamesWork);
        return new(
            string.Join("; ", pieces[false]),
            [.. pieces[true].Select(piece => (piece[..At(piece)].Trim(), piece[(At(piece) + For.Length)..].Trim()))]
        );
    }

    private static int At(string piece) => piece.IndexOf(For, StringComparison.OrdinalIgnoreCase);
}
