namespace ClassKit.CellFormulas.Syntax;

/// <summary><c>A1#</c>, stored as <c>_xlfn.ANCHORARRAY(A1)</c>: everything that the formula in a cell fills.</summary>
/// <param name="Operand">The cell.</param>
/// <param name="Span">Where it stands.</param>
public sealed record SpillNode(FormulaNode Operand, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [Operand];
}
