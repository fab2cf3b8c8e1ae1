using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>An error value written out, such as <c>#N/A</c>, or what is left of a reference to a deleted cell.</summary>
/// <param name="Error">Which error.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ErrorNode(CellError Error, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
