namespace ClassKit.CellFormulas.Syntax;

/// <summary>An argument left out between two commas, as in <c>ROUND(2.5,)</c>.</summary>
/// <param name="Span">Where it would stand; empty.</param>
public sealed record MissingNode(TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
