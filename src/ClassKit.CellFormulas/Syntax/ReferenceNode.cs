namespace ClassKit.CellFormulas.Syntax;

/// <summary>A reference to a cell (<c>B5</c>), a rectangle (<c>B5:C9</c>), whole columns (<c>B:C</c>) or whole rows (<c>5:9</c>).</summary>
/// <param name="Sheet">The sheet written before it, unquoted; null for the sheet that the formula is on.</param>
/// <param name="First">The first corner as written; not always the top left one.</param>
/// <param name="Last">The other corner; null for a single cell.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ReferenceNode(string? Sheet, Corner First, Corner? Last, TextSpan Span) : FormulaNode(Span)
{
    /// <summary>True for a single cell.</summary>
    public bool IsCell => Last is null;

    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
