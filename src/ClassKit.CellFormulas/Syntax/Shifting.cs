using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>Moves the references that have no <c>$</c>, as copying a cell does and as shared formulas in files ask for.</summary>
/// <remarks>Source: ECMA-376 Part 1, 18.3.1.40 (shared formulas).</remarks>
internal sealed class Shifting(int rows, int columns) : TreeRewriter
{
    protected override FormulaNode Replace(ReferenceNode reference)
    {
        if (Move(reference.First) is not { } first)
            return new ErrorNode(CellError.Reference, reference.Span);
        if (reference.Last is not { } corner)
            return reference with { First = first };
        return Move(corner) is { } last
            ? reference with
            {
                First = first,
                Last = last,
            }
            : new ErrorNode(CellError.Reference, reference.Span);
    }

    private Corner? Move(Corner corner)
    {
        var row = corner.Row == 0 || corner.RowFixed ? corner.Row : corner.Row + (long)rows;
        var column = corner.Column == 0 || corner.ColumnFixed ? corner.Column : corner.Column + (long)columns;
        if (corner.Row != 0 && row is < 1 or > CellAddress.LastRow)
            return null;
        if (corner.Column != 0 && column is < 1 or > CellAddress.LastColumn)
            return null;
        return corner with { Row = (int)row, Column = (int)column };
    }
}
