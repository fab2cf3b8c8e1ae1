namespace ClassKit.CellFormulas.Syntax;

/// <summary>A defined name, or a name bound by LET.</summary>
/// <param name="Sheet">The sheet written before it, unquoted; usually null.</param>
/// <param name="Name">The name as written.</param>
/// <param name="Span">Where it stands.</param>
public sealed record NameNode(string? Sheet, string Name, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
