using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>An array constant, such as <c>{1,2;3,4}</c>.</summary>
/// <param name="Columns">Elements in each row; at least 1.</param>
/// <param name="Elements">All elements, row by row.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ArrayNode(int Columns, IReadOnlyList<CellValue> Elements, TextSpan Span) : FormulaNode(Span)
{
    /// <summary>Rows; at least 1.</summary>
    public int Rows => Elements.Count / Columns;

    /// <inheritdoc/>
    public override IReadOnlyList<FormulaNode> Children() => [];
}
