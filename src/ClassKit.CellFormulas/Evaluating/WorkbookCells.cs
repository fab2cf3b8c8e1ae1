using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Reads cells of a workbook, computing those that hold formulas.</summary>
internal sealed class WorkbookCells : CellSource
{
    private const int DeepestPath = 100;

    /// <summary>How much of a formula can be read in the time of a step.</summary>
    private const int CharactersPerStep = 32;

    private readonly PreparedWorkbook _workbook;
    private readonly Run _run;
    private readonly CellPath _path;
    private readonly Agenda _agenda;
    private readonly NamesOpen _names;
    private readonly Func<FormulaNode, bool, FormulaValue> _afresh;
    private readonly KnownCells _known = new();
    private readonly WorkbookAreas _areas;
    private readonly Rectangles _rectangles;
    private Replacements _replaced = Replacements.None;

    /// <summary>Puts a reader together.</summary>
    /// <param name="workbook">What is read.</param>
    /// <param name="run">The evaluation.</param>
    /// <param name="path">The cells being computed.</param>
    /// <param name="agenda">The cells to be computed.</param>
    /// <param name="names">The names being computed.</param>
    /// <param name="afresh">Evaluates the formula of a cell, as an array formula or not.</param>
    public WorkbookCells(
        PreparedWorkbook workbook,
        Run run,
        CellPath path,
        Agenda agenda,
        NamesOpen names,
        Func<FormulaNode, bool, FormulaValue> afresh
    )
    {
        (_workbook, _run, _path, _agenda, _names, _afresh) = (workbook, run, path, agenda, names, afresh);
        _areas = new(workbook, run, path, Read);
        _rectangles = new(run, this);
    }

    public override (int Row, int Column)? Place => _path.Count > 0 ? (_path.Last.Row, _path.Last.Column) : null;

    public override int SheetCount => _workbook.Sheets.Length;

    /// <summary>Forgets all values and takes up other inputs.</summary>
    public void Begin(Replacements replaced)
    {
        _replaced = replaced;
        _known.Forget();
        _areas.Begin(replaced);
        _path.Forget();
    }

    /// <summary>All cells read so far but one.</summary>
    public CellKey[] KnownExcept(CellKey target) => _known.Except(target);

    public override int SheetIndex(string? name)
    {
        if (name is null)
            return _path.Last.Sheet;
        var sheet = _workbook.FindSheet(name);
        if (sheet < 0)
            _run.Reason ??= new Obstacle.NoSheet(name!);
        return sheet;
    }

    public override string? FormulaText(int sheet, int row, int column) =>
        _replaced.TryGet(new(sheet, row, column), _workbook.Sheets[sheet].Snapshot.Name, out _)
            ? null
            : _workbook.Sheets[sheet].Snapshot.Cells.GetValueOrDefault((row, column))?.Formula;

    public override bool IsHidden(int sheet, int row, bool byFilterOnly)
    {
        var snapshot = _workbook.Sheets[sheet].Snapshot;
        return snapshot.HiddenRows.Contains(row)
            && (!byFilterOnly || (snapshot.FilteredRows is var (first, last) && row >= first && row <= last));
    }

    public override Area? Used(Area area) => _areas.Used(area);

    public override void Collect(Area area, List<CellValue> into) => _areas.Collect(area, into);

    public override ArrayValue? Recall(Area area) => _areas.Recall(area);

    public override void Remember(Area area, ArrayValue values) => _areas.Remember(area, values);

    public override bool Deepen()
    {
        if (_path.Count < 2)
            return false;
        _agenda.Defer(_path.Last);
        return true;
    }

    public override CellValue Read(int sheet, int row, int column) => Read(new(sheet, row, column));

    public CellValue Read(CellKey key)
    {
        _run.Spend(1);
        if (_run.Halted)
            return default;
        if (_known.TryGet(key, out var known))
        {
            if (known.IsError)
                Recall(key);
            return known;
        }

        if (_known.HasEnd(key, out var end))
        {
            _run.Halt(end.Status, end.Reason);
            return default;
        }

        var sheet = _workbook.Sheets[key.Sheet];
        if (_replaced.TryGet(key, sheet.Snapshot.Name, out var replaced))
            return _known.Keep(key, replaced);
        var content = sheet.Snapshot.Cells.GetValueOrDefault((key.Row, key.Column));
        if (content?.Formula is { } formula)
            return Follow(key, formula, content.ArrayRange is not null);
        _run.Spend(sheet.Arrays.Length);
        foreach (var (area, master) in sheet.Arrays)
        {
            if (area.Contains(key.Row, key.Column) && master != key)
                return ReadElement(key, master, area);
        }

        if (content is null)
            return _known.Keep(key, default(CellValue));
        _run.Meter.TakeFor(content.Stored);
        return _known.Keep(key, content.Stored);
    }

    private CellValue Follow(CellKey key, string formula, bool isArray)
    {
        var again = _path.IndexOf(key);
        if (again >= 0)
            return _path.CloseCircle(again);
        if (_path.Count > 0 && _agenda.WaitsBelow(key))
            return _path.CloseCircle(0);
        if (_path.Count >= DeepestPath)
        {
            _agenda.Defer(key);
            return default;
        }

        _run.Spend(formula.Length / CharactersPerStep);
        var parse = _workbook.Parse(key, formula);
        if (parse.Formula is null)
        {
            _run.Unsupported(new Obstacle.NoFormula(_workbook.AddressOf(key), parse.Error!));
            return default;
        }

        var outer = _names.Hide();
        _path.Enter(key);
        var result = _afresh(parse.Formula.Root, isArray);
        if (result.Reference is { } reference)
            result = ResolveIn(isArray, reference);
        var value = CellResult.Of(result);
        var circle = _path.Leave();
        _names.Show(outer);
        return Settle(key, value, circle, isArray ? result.Array : null);
    }

    /// <summary>Keeps what was found, or that nothing was.</summary>
    private CellValue Settle(CellKey key, CellValue value, int circle, ArrayValue? array)
    {
        if (_run.Halted)
        {
            if (!_agenda.HasDeferred && _run.Status != EvaluationStatus.Computed)
                _known.KeepEnd(key, _run.Status, _run.Reason!);
            return default;
        }

        if (circle <= _path.Count)
            value = _path.LeaveCircle(key, circle);
        if (array is not null)
            _known.Keep(key, array);
        if (value.IsError && _run.Reason is { } reason)
            _known.KeepReason(key, reason);
        return _known.Keep(key, value);
    }

    /// <summary>A known error comes with its reason and, while its circle is still open, puts its reader into the circle.</summary>
    private void Recall(CellKey key)
    {
        _run.Reason ??= _known.ReasonOf(key);
        _path.JoinCircle(key);
    }

    private FormulaValue ResolveIn(bool isArray, Reference reference) =>
        isArray && !reference.IsCell ? _rectangles.Array(reference) : _rectangles.Single(reference);

    /// <summary>A cell that an array formula in another cell fills.</summary>
    private CellValue ReadElement(CellKey key, CellKey master, Area area)
    {
        var first = Read(master);
        if (_run.Halted)
            return default;
        var value = _known.ArrayOf(master) is { } array
            ? CellResult.Of(array.Broadcast(key.Row - area.Top, key.Column - area.Left))
            : first;
        return _known.Keep(key, value);
    }
}
