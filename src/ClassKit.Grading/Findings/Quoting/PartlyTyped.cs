namespace ClassKit.Grading.Findings.Quoting;

/// <summary>A text of ours in which words stand that a student typed, such as why a file cannot be read.</summary>
/// <param name="Pieces">Its pieces in order, each ours or typed.</param>
public sealed record PartlyTyped(IReadOnlyList<TextPiece> Pieces)
{
    internal PartlyTyped Under(IDisguise disguise) => new([.. Pieces.Select(piece => piece.IsTyped ? piece with { Text = disguise.OfTyped(piece.Text) } : piece)]);

    /// <inheritdoc/>
    public bool Equals(PartlyTyped? other) => other is not null && Pieces.SequenceEqual(other.Pieces);

    /// <inheritdoc/>
    public override int GetHashCode() => Pieces.Aggregate(0, HashCode.Combine);
}
