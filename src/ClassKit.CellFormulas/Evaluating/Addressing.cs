using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Which cells a reference means, and what operators make of references.</summary>
internal sealed class Addressing(Run run, CellSource cells, NameSource names)
{
    private const int MostAreas = 1000;
    private const int AreasPerStep = 8;

    public FormulaValue Locate(ReferenceNode node)
    {
        var sheet = cells.SheetIndex(node.Sheet);
        if (sheet < 0)
            return CellError.Reference;
        if (Move(node.First) is not { } first)
            return CellError.Reference;
        if (node.Last is not { } written)
            return new Reference(new Area(sheet, first.Row, first.Column, first.Row, first.Column));
        if (Move(written) is not { } last)
            return CellError.Reference;
        if (first.Row == 0)
            (first, last) = (first with { Row = 1 }, last with { Row = CellAddress.LastRow });
        if (first.Column == 0)
            (first, last) = (first with { Column = 1 }, last with { Column = CellAddress.LastColumn });
        return new Reference(Area.Between(sheet, first.Row, first.Column, last.Row, last.Column));
    }

    /// <summary>The quick way for the commonest operand, a single cell.</summary>
    public CellValue Cell(ReferenceNode node)
    {
        run.Spend(1);
        if (run.Halted)
            return default;
        var sheet = cells.SheetIndex(node.Sheet);
        return sheet >= 0 && Move(node.First) is { } corner
            ? cells.Read(sheet, corner.Row, corner.Column)
            : CellValue.FromError(CellError.Reference);
    }

    /// <summary>Union, intersection and range.</summary>
    public FormulaValue Combine(BinaryOperator op, FormulaValue left, FormulaValue right)
    {
        if (left.IsError)
            return left;
        if (right.IsError)
            return right;
        if (left.Reference is not { } a || right.Reference is not { } b)
            return CellError.Value;
        return op switch
        {
            BinaryOperator.Union => Unite(a, b),
            BinaryOperator.Intersection => Intersect(a, b),
            _ => Span(a, b),
        };
    }

    private FormulaValue Unite(Reference a, Reference b)
    {
        run.Spend((a.Areas.Length + b.Areas.Length) / AreasPerStep);
        return a.Areas.Length + b.Areas.Length > MostAreas
            ? run.Unsupported(new Obstacle.TooManyAreas(MostAreas))
            : new Reference([.. a.Areas, .. b.Areas]);
    }

    private FormulaValue Intersect(Reference a, Reference b)
    {
        run.Spend((long)a.Areas.Length * b.Areas.Length);
        var common = new List<Area>();
        foreach (var area in a.Areas)
        {
            foreach (var other in b.Areas)
            {
                if (area.Intersect(other) is { } both)
                    common.Add(both);
            }
        }

        return common.Count == 0 ? CellError.Null : new Reference([.. common]);
    }

    private static FormulaValue Span(Reference a, Reference b)
    {
        if (a.Areas.Length > 1 || b.Areas.Length > 1 || a.First.Sheet != b.First.Sheet)
            return CellError.Value;
        var (first, last) = (a.First, b.First);
        return new Reference(
            new Area(
                first.Sheet,
                Math.Min(first.Top, last.Top),
                Math.Min(first.Left, last.Left),
                Math.Max(first.Bottom, last.Bottom),
                Math.Max(first.Right, last.Right)
            )
        );
    }

    private Corner? Move(Corner corner)
    {
        var (rows, columns) = names.Offset;
        if (rows == 0 && columns == 0)
            return corner;

        // A relative reference in a defined name wraps around the edges of the sheet.
        return corner with
        {
            Row = corner.Row == 0 || corner.RowFixed ? corner.Row : Wrap(corner.Row + rows, CellAddress.LastRow),
            Column = corner.Column == 0 || corner.ColumnFixed ? corner.Column : Wrap(corner.Column + columns, CellAddress.LastColumn),
        };
    }

    private static int Wrap(int at, int last) => (at - 1 + last) % last + 1;
}
