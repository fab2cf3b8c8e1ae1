namespace ClassKit.CellFormulas.Syntax;

/// <summary>A part of a formula's syntax tree. The tree says what is written and nothing of what it means.</summary>
/// <param name="Span">Where it stands in the text.</param>
public abstract record FormulaNode(TextSpan Span)
{
    /// <summary>The nodes directly below, in the order in which they are written.</summary>
    public abstract IReadOnlyList<FormulaNode> Children();
}
