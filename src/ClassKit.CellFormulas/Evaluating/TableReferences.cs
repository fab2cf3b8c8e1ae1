using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>References to tables by the names of their columns.</summary>
/// <remarks>Source: ECMA-376 Part 1, 18.17.6.2.</remarks>
internal sealed class TableReferences(PreparedWorkbook workbook, Run run)
{
    /// <summary>The cells that a reference means in the formula of a cell.</summary>
    public FormulaValue Cells(TableNode node, CellKey here)
    {
        run.Spend(workbook.Workbook.Tables.Count);
        if (workbook.FindTable(node.Table, here.Sheet, here.Row, here.Column) is not { } table)
            return run.Unsupported(node.Table is null ? new Obstacle.InNoTable(node.Text) : new Obstacle.NoTable(node.Table));
        var sheet = workbook.FindSheet(table.Sheet);
        var (left, right) = (0, table.Columns.Count - 1);
        if (node.FirstColumn is not null)
        {
            left = Find(table, node.FirstColumn);
            right = node.LastColumn is null ? left : Find(table, node.LastColumn);
        }

        if (left < 0 || right < 0)
        {
            run.Reason ??= new Obstacle.NoColumn(table.Name, node.Text);
            return CellError.Reference;
        }

        if (Rows(table, node.Rows, here.Row) is not var (top, bottom))
            return node.Rows == TableRows.ThisRow ? CellError.Value : CellError.Reference;
        return new Reference(Area.Between(sheet, top, table.Left + left, bottom, table.Left + right));
    }

    /// <summary>The rows meant, which always lie together; null if there are none.</summary>
    private static (int Top, int Bottom)? Rows(TableSnapshot table, TableRows rows, int here)
    {
        var (first, last) = (table.Top + (table.HasHeaders ? 1 : 0), table.Bottom - (table.HasTotals ? 1 : 0));
        if ((rows & TableRows.ThisRow) != 0)
        {
            return here >= first && here <= last ? (here, here) : null;
        }

        var top =
            (rows & TableRows.Headers) != 0 && table.HasHeaders ? table.Top
            : (rows & TableRows.Data) != 0 ? first
            : table.HasTotals ? table.Bottom
            : int.MaxValue;
        var bottom =
            (rows & TableRows.Totals) != 0 && table.HasTotals ? table.Bottom
            : (rows & TableRows.Data) != 0 ? last
            : table.HasHeaders ? table.Top
            : 0;
        if (rows == TableRows.Headers)
            bottom = table.HasHeaders ? table.Top : 0;
        return top <= bottom ? (top, bottom) : null;
    }

    private static int Find(TableSnapshot table, string column)
    {
        for (var at = 0; at < table.Columns.Count; at++)
        {
            if (string.Equals(table.Columns[at], column, StringComparison.OrdinalIgnoreCase))
                return at;
        }

        return -1;
    }
}
