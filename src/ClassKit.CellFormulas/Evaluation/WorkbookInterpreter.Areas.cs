using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Rectangles of cells and defined names.</summary>
internal sealed partial class WorkbookInterpreter
{
    public override Area? Used(Area area)
    {
        var sheet = _workbook.Sheets[area.Sheet];
        var (lastRow, lastColumn) = (sheet.LastRow, sheet.LastColumn);
        foreach (var cell in _replaced.Keys)
        {
            if (!string.Equals(cell.Sheet, sheet.Snapshot.Name, StringComparison.OrdinalIgnoreCase)) continue;
            (lastRow, lastColumn) = (Math.Max(lastRow, cell.Row), Math.Max(lastColumn, cell.Column));
        }

        return lastRow == 0 ? null : area.Intersect(new(area.Sheet, 1, 1, lastRow, lastColumn));
    }

    public override void Collect(Area area, List<CellValue> into)
    {
        if (Used(area) is not { } used) return;
        if (Sparse(used))
        {
            CollectSorted(used, into);
            return;
        }

        for (var row = used.Top; row <= used.Bottom && !Halted; row++)
        {
            for (var column = used.Left; column <= used.Right; column++)
            {
                if (IsFilled(used.Sheet, row, column) && Read(used.Sheet, row, column) is { IsBlank: false } value) into.Add(value);
            }
        }
    }

    protected override FormulaValue Name(NameNode node)
    {
        var sheet = node.Sheet is null ? CurrentSheet : _workbook.FindSheet(node.Sheet);
        if (sheet < 0) return CellError.Reference;
        if (_workbook.FindName(sheet, node.Name) is not { } name)
        {
            Reason ??= $"nothing is called {node.Name}";
            return CellError.Name;
        }

        if (_workbook.Parse(name.Formula).Formula is not { } formula) return Unsupported($"the name {name.Name} stands for no formula that can be read");
        if (_nameDepth >= DeepestName)
        {
            Reason ??= $"the name {name.Name} stands for itself";
            return CellError.Reference;
        }

        // Relative references in a name are written as seen from A1.
        var outer = _offset;
        _offset = (_path[^1].Row - 1, _path[^1].Column - 1);
        _nameDepth++;
        var value = Afresh(formula.Root, arrayMode: true);
        _nameDepth--;
        _offset = outer;
        return value;
    }

    protected override FormulaValue Spill(Reference anchor)
    {
        var cell = anchor.First;
        foreach (var (area, master) in _workbook.Sheets[cell.Sheet].Arrays)
        {
            if (master == new CellKey(cell.Sheet, cell.Top, cell.Left)) return new Reference(area);
        }

        return CellError.Reference;
    }

    /// <summary>True where it is quicker to look through the sheet's cells than through the places of the area.</summary>
    private bool Sparse(Area area) => (long)area.Rows * area.Columns > 4L * _workbook.Sheets[area.Sheet].Snapshot.Cells.Count + 1000;

    private bool IsFilled(int sheet, int row, int column)
    {
        var index = _workbook.Sheets[sheet];
        if (index.Snapshot.Cells.ContainsKey((row, column))) return true;
        if (_replaced.Count > 0 && _replaced.ContainsKey(new(index.Snapshot.Name, row, column))) return true;
        foreach (var (area, _) in index.Arrays)
        {
            if (area.Contains(row, column)) return true;
        }

        return false;
    }

    private void CollectSorted(Area area, List<CellValue> into)
    {
        var sheet = _workbook.Sheets[area.Sheet];
        IEnumerable<(int Row, int Column)> places = sheet.Sorted;
        var extra = _replaced.Keys
            .Where(cell => string.Equals(cell.Sheet, sheet.Snapshot.Name, StringComparison.OrdinalIgnoreCase))
            .Select(cell => (cell.Row, cell.Column))
            .Concat(ArrayElements(sheet))
            .Where(place => !sheet.Snapshot.Cells.ContainsKey(place))
            .Distinct()
            .ToList();
        if (extra.Count > 0) places = places.Concat(extra).Order();
        foreach (var (row, column) in places)
        {
            if (Halted) return;
            if (area.Contains(row, column) && Read(area.Sheet, row, column) is { IsBlank: false } value) into.Add(value);
        }
    }

    private IEnumerable<(int Row, int Column)> ArrayElements(SheetIndex sheet)
    {
        foreach (var (area, _) in sheet.Arrays)
        {
            if (TooLarge((long)area.Rows * area.Columns)) yield break;
            for (var row = area.Top; row <= area.Bottom; row++)
            {
                for (var column = area.Left; column <= area.Right; column++) yield return (row, column);
            }
        }
    }
}
