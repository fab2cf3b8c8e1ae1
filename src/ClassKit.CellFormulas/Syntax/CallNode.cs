namespace ClassKit.CellFormulas.Syntax;

/// <summary>A function with its arguments.</summary>
/// <param name="Name">The function's name in capitals, without the prefixes (<c>_xlfn.</c>) that files put before newer ones.</param>
/// <param name="Arguments">The arguments; one left out is a <see cref="MissingNode"/>.</param>
/// <param name="Span">Where it stands.</param>
public sealed record CallNode(string Name, IReadOnlyList<FormulaNode> Arguments, TextSpan Span) : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => Arguments;
}
