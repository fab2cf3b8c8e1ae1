namespace ClassKit.CellFormulas.Syntax;

/// <summary>Parentheses around an expression, kept because they show how the writer thought.</summary>
/// <param name="Inner">What they hold.</param>
/// <param name="Span">Where they stand.</param>
public sealed record GroupNode(FormulaNode Inner, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [Inner];
}
