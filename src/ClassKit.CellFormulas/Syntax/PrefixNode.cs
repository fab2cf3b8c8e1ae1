namespace ClassKit.CellFormulas.Syntax;

/// <summary>A prefix operator with its operand.</summary>
/// <param name="Operator">The operator.</param>
/// <param name="Operand">What it applies to.</param>
/// <param name="Span">Where it stands.</param>
public sealed record PrefixNode(PrefixOperator Operator, FormulaNode Operand, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [Operand];
}
