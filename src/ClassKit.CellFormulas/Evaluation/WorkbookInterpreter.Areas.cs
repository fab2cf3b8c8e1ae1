using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Rectangles of cells and defined names.</summary>
internal sealed partial class WorkbookInterpreter
{
    /// <summary>What looking whether a place is filled takes.</summary>
    private const int TicksPerPlace = Meter.TicksPerStep / 2;

    public override Area? Used(Area area)
    {
        var sheet = _workbook.Sheets[area.Sheet];
        var (lastRow, lastColumn) = (sheet.LastRow, sheet.LastColumn);
        foreach (var (row, column) in _replaced.On(area.Sheet, sheet.Snapshot.Name))
            (lastRow, lastColumn) = (Math.Max(lastRow, row), Math.Max(lastColumn, column));

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
            Meter.Take((long)used.Columns * TicksPerPlace);
            for (var column = used.Left; column <= used.Right; column++)
            {
                if (IsFilled(used.Sheet, row, column) && Read(used.Sheet, row, column) is { IsBlank: false } value) into.Add(value);
            }
        }
    }

    protected override ArrayValue? Recall(Area area)
    {
        if (_areas is null || !_areas.TryGetValue(area, out var values)) return null;
        Spend(1);
        return values;
    }

    /// <summary>Large areas only, as of a table that every row looks something up in, and never while a circle may be open.</summary>
    protected override void Remember(Area area, ArrayValue values)
    {
        const int Small = 50;
        const int MostKept = 500_000;
        var size = values.StoredRows * values.StoredColumns;
        if (size < Small || _areaCells + size > MostKept || _leadsTo is not null || _circleFrom.Exists(from => from != int.MaxValue)) return;
        _areaCells += size;
        (_areas ??= [])[area] = values;
    }

    protected override bool TryCell(NameNode name, out CellValue value)
    {
        value = default;
        if (_nameDepth > 0 || _workbook.Resolve(CurrentSheet, name).Cell is not { } cell) return false;
        value = Read(cell);
        return true;
    }

    protected override bool IsUnknown(NameNode name) => _workbook.FindTarget(CurrentSheet, name) is { Problem: not null, Error: CellError.Name };

    protected override FormulaValue Name(NameNode node)
    {
        // Only in formulas of cells does a name always mean the same; names in names are looked up as seen from the cell.
        var target = _nameDepth == 0 ? _workbook.Resolve(CurrentSheet, node) : _workbook.FindTarget(CurrentSheet, node);
        if (target.Problem is { } problem)
        {
            Reason ??= problem;
            return target.Error;
        }

        if (target.Formula is null) return Unsupported($"the name {node.Name} stands for no formula that can be read");
        if (_nameDepth >= DeepestName || _naming.IndexOf(target.Formula, _namingFrom) >= 0)
        {
            Reason ??= $"the name {node.Name} stands for itself";
            return CellError.Reference;
        }

        // Relative references in a name are written as seen from A1.
        var outer = _offset;
        _offset = (_path[^1].Row - 1, _path[^1].Column - 1);
        _nameDepth++;
        _naming.Add(target.Formula);
        var value = Afresh(target.Formula.Root, arrayMode: true);
        _naming.RemoveAt(_naming.Count - 1);
        _nameDepth--;
        _offset = outer;
        return value;
    }

    protected override FormulaValue Spill(Reference anchor)
    {
        var cell = anchor.First;
        var sheet = _workbook.Sheets[cell.Sheet];
        foreach (var (area, master) in sheet.Arrays)
        {
            if (master == new CellKey(cell.Sheet, cell.Top, cell.Left)) return new Reference(area);
        }

        var isAlone = sheet.Snapshot.Cells.GetValueOrDefault((cell.Top, cell.Left)) is { ArrayRange: not null };
        return isAlone ? anchor : CellError.Reference;
    }

    /// <summary>True where it is quicker to look through the sheet's cells than through the places of the area.</summary>
    private bool Sparse(Area area) => (long)area.Rows * area.Columns > 4L * _workbook.Sheets[area.Sheet].Snapshot.Cells.Count + 1000;

    private bool IsFilled(int sheet, int row, int column)
    {
        var index = _workbook.Sheets[sheet];
        if (index.Snapshot.Cells.ContainsKey((row, column))) return true;
        if (_replaced.TryGet(new(sheet, row, column), index.Snapshot.Name, out _)) return true;
        Spend(index.Arrays.Length);
        foreach (var (area, _) in index.Arrays)
        {
            if (area.Contains(row, column)) return true;
        }

        return false;
    }

    private void CollectSorted(Area area, List<CellValue> into)
    {
        var sheet = _workbook.Sheets[area.Sheet];
        Meter.Take(2L * sheet.Snapshot.Cells.Count);
        IEnumerable<(int Row, int Column)> places = sheet.Sorted;
        var extra = _replaced.On(area.Sheet, sheet.Snapshot.Name)
            .Concat(ArrayElements(sheet))
            .Where(place => !sheet.Snapshot.Cells.ContainsKey(place))
            .Distinct()
            .ToList();
        if (extra.Count > 0)
        {
            Meter.TakeForSorting(sheet.Snapshot.Cells.Count + extra.Count);
            places = places.Concat(extra).Order();
        }

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
