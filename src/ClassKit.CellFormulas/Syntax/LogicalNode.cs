namespace ClassKit.CellFormulas.Syntax;

/// <summary><c>TRUE</c> or <c>FALSE</c>.</summary>
/// <param name="Value">Which.</param>
/// <param name="Span">Where it stands.</param>
public sealed record LogicalNode(bool Value, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
