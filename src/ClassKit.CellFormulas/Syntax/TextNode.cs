namespace ClassKit.CellFormulas.Syntax;

/// <summary>A text between quotation marks.</summary>
/// <param name="Value">The text meant, with doubled quotation marks undone.</param>
/// <param name="Span">Where it stands.</param>
public sealed record TextNode(string Value, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
