namespace ClassKit.CellFormulas.Syntax;

/// <summary>A construct of the language that we recognise and do not evaluate.</summary>
/// <param name="Construct">What it is.</param>
/// <param name="Text">As written.</param>
/// <param name="Span">Where it stands.</param>
public sealed record UnsupportedNode(Construct Construct, string Text, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
