namespace ClassKit.CellFormulas.Syntax;

/// <summary>A percent sign after its operand: a hundredth of it.</summary>
/// <param name="Operand">What it applies to.</param>
/// <param name="Span">Where it stands.</param>
public sealed record PercentNode(FormulaNode Operand, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [Operand];
}
