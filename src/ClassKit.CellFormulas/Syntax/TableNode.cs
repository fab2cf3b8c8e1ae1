namespace ClassKit.CellFormulas.Syntax;

/// <summary>A reference to a part of a table by the names of its columns: <c>Doughs[Flour]</c>, <c>[@Flour]</c>.</summary>
/// <param name="Table">The table's name; null for the one that the formula's cell lies in.</param>
/// <param name="Rows">Which rows.</param>
/// <param name="FirstColumn">The first column's name; null for all columns.</param>
/// <param name="LastColumn">The last column's name; null for one column alone.</param>
/// <param name="Text">As written.</param>
/// <param name="Span">Where it stands.</param>
public sealed record TableNode(string? Table, TableRows Rows, string? FirstColumn, string? LastColumn, string Text, TextSpan Span)
    : FormulaNode(Span)
{
    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
