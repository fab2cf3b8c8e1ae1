using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Rectangles of a workbook's cells, and what of them was read before.</summary>
/// <param name="workbook">Which.</param>
/// <param name="run">The evaluation.</param>
/// <param name="path">The cells being computed.</param>
/// <param name="read">Reads a cell.</param>
internal sealed class WorkbookAreas(PreparedWorkbook workbook, Run run, CellPath path, Func<CellKey, CellValue> read)
{
    /// <summary>What looking whether a place is filled takes.</summary>
    private const int TicksPerPlace = Meter.TicksPerStep / 2;

    private Replacements _replaced = Replacements.None;
    private Dictionary<Area, ArrayValue>? _areas;
    private int _areaCells;

    /// <summary>Forgets all values and takes up other inputs.</summary>
    public void Begin(Replacements replaced) => (_replaced, _areas, _areaCells) = (replaced, null, 0);

    public Area? Used(Area area)
    {
        var sheet = workbook.Sheets[area.Sheet];
        var (lastRow, lastColumn) = (sheet.LastRow, sheet.LastColumn);
        foreach (var (row, column) in _replaced.On(area.Sheet, sheet.Snapshot.Name))
            (lastRow, lastColumn) = (Math.Max(lastRow, row), Math.Max(lastColumn, column));

        return lastRow == 0 ? null : area.Intersect(new(area.Sheet, 1, 1, lastRow, lastColumn));
    }

    public void Collect(Area area, List<CellValue> into)
    {
        if (Used(area) is not { } used)
            return;
        if (Sparse(used))
        {
            CollectSorted(used, into);
            return;
        }

        for (var row = used.Top; row <= used.Bottom && !run.Halted; row++)
        {
            run.Meter.Take((long)used.Columns * TicksPerPlace);
            for (var column = used.Left; column <= used.Right; column++)
            {
                if (IsFilled(used.Sheet, row, column) && read(new(used.Sheet, row, column)) is { IsBlank: false } value)
                    into.Add(value);
            }
        }
    }

    public ArrayValue? Recall(Area area)
    {
        if (_areas is null || !_areas.TryGetValue(area, out var values))
            return null;
        run.Spend(1);
        return values;
    }

    /// <summary>Large areas only, as of a table that every row looks something up in, and never while a circle may be open.</summary>
    public void Remember(Area area, ArrayValue values)
    {
        const int Small = 50;
        const int MostKept = 500_000;
        var size = values.StoredRows * values.StoredColumns;
        if (size < Small || _areaCells + size > MostKept || path.MayBeInCircle)
            return;
        _areaCells += size;
        (_areas ??= [])[area] = values;
    }

    /// <summary>True where it is quicker to look through the sheet's cells than through the places of the area.</summary>
    private bool Sparse(Area area) => (long)area.Rows * area.Columns > 4L * workbook.Sheets[area.Sheet].Snapshot.Cells.Count + 1000;

    private bool IsFilled(int sheet, int row, int column)
    {
        var index = workbook.Sheets[sheet];
        if (index.Snapshot.Cells.ContainsKey((row, column)))
            return true;
        if (_replaced.TryGet(new(sheet, row, column), index.Snapshot.Name, out _))
            return true;
        run.Spend(index.Arrays.Length);
        foreach (var (area, _) in index.Arrays)
        {
            if (area.Contains(row, column))
                return true;
        }

        return false;
    }

    private void CollectSorted(Area area, List<CellValue> into)
    {
        var sheet = workbook.Sheets[area.Sheet];
        run.Meter.Take(2L * sheet.Snapshot.Cells.Count);
        IEnumerable<(int Row, int Column)> places = sheet.Sorted;
        var extra = _replaced
            .On(area.Sheet, sheet.Snapshot.Name)
            .Concat(ArrayElements(sheet))
            .Where(place => !sheet.Snapshot.Cells.ContainsKey(place))
            .Distinct()
            .ToList();
        if (extra.Count > 0)
        {
            run.Meter.TakeForSorting(sheet.Snapshot.Cells.Count + extra.Count);
            places = places.Concat(extra).Order();
        }

        foreach (var (row, column) in places)
        {
            if (run.Halted)
                return;
            if (area.Contains(row, column) && read(new(area.Sheet, row, column)) is { IsBlank: false } value)
                into.Add(value);
        }
    }

    private IEnumerable<(int Row, int Column)> ArrayElements(SheetIndex sheet)
    {
        foreach (var (area, _) in sheet.Arrays)
        {
            if (run.TooLarge((long)area.Rows * area.Columns))
                yield break;
            for (var row = area.Top; row <= area.Bottom; row++)
            {
                for (var column = area.Left; column <= area.Right; column++)
                    yield return (row, column);
            }
        }
    }
}
