namespace ClassKit.CellFormulas.Syntax;

/// <summary>An operator between two operands.</summary>
/// <param name="Operator">The operator.</param>
/// <param name="Left">What stands before it.</param>
/// <param name="Right">What stands after it.</param>
/// <param name="Span">Where it stands.</param>
public sealed record BinaryNode(BinaryOperator Operator, FormulaNode Left, FormulaNode Right, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [Left, Right];
}
