namespace ClassKit.CellFormulas.Syntax;

/// <summary>
/// A number as typed: <c>12</c>, <c>.5</c>, <c>1.5E-3</c>. Never negative: a minus before it is a <see cref="PrefixNode"/>.
/// </summary>
/// <param name="Value">Its value.</param>
/// <param name="Span">Where it stands.</param>
public sealed record NumberNode(double Value, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
