using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// Computes cells of a workbook by following references from formula to formula.
/// Chains of any length are followed: where the stack would grow too deep, the cell reached is noted, the attempt is given up, and the cell is computed first.
/// </summary>
internal sealed partial class WorkbookInterpreter : Interpreter
{
    private const int DeepestPath = 100;
    private const int DeepestName = 50;

    private readonly PreparedWorkbook _workbook;
    private readonly IReadOnlyDictionary<CellAddress, CellValue> _replaced;
    private readonly Dictionary<CellKey, CellValue> _known = new(16);
    private readonly List<CellKey> _path = [];
    private readonly Stack<CellKey> _waiting = new();
    private Dictionary<CellKey, ArrayValue>? _arrays;
    private (int Rows, int Columns) _offset;
    private CellKey? _deferred;
    private int _nameDepth;

    public WorkbookInterpreter(
        PreparedWorkbook workbook, EvaluationLimits limits, IReadOnlyDictionary<CellAddress, CellValue> replaced, CancellationToken cancellation)
        : base(limits, workbook.Workbook.Uses1904Dates, cancellation)
    {
        _workbook = workbook;
        _replaced = replaced;
    }

    public override (int Row, int Column)? Place => _path.Count > 0 ? (_path[^1].Row, _path[^1].Column) : null;

    protected override (int Rows, int Columns) Offset => _offset;

    private int CurrentSheet => _path[^1].Sheet;

    /// <summary>The value of a cell, and what it depends on.</summary>
    public Evaluation Evaluate(CellKey target)
    {
        _waiting.Push(target);
        var value = CellValue.Blank;
        while (_waiting.Count > 0 && !Halted)
        {
            value = Read(_waiting.Peek());
            if (_deferred is { } deeper)
            {
                _deferred = null;
                Halted = false;
                _waiting.Push(deeper);
            }
            else
            {
                _waiting.Pop();
            }
        }

        var dependencies = new CellAddressView(_known.Keys, target, _workbook.Workbook);
        if (Halted) return new(Status, CellValue.Blank, Reason, dependencies);
        return new(EvaluationStatus.Computed, value, value.IsError ? Reason : null, dependencies);
    }

    public override CellValue Read(int sheet, int row, int column) => Read(new CellKey(sheet, row, column));

    public override int SheetIndex(string? name)
    {
        if (name is null) return CurrentSheet;
        var sheet = _workbook.FindSheet(name);
        if (sheet < 0) Reason ??= $"there is no sheet called {name}";
        return sheet;
    }

    protected override bool Deepen()
    {
        if (_path.Count < 2) return false;
        Defer(_path[^1]);
        return true;
    }

    private void Defer(CellKey cell)
    {
        _deferred ??= cell;
        Halted = true;
    }

    private CellValue Read(CellKey key)
    {
        Spend(1);
        if (Halted) return default;
        if (_known.TryGetValue(key, out var known))
        {
            JoinCircle(key);
            return known;
        }

        var sheet = _workbook.Sheets[key.Sheet];
        if (_replaced.Count > 0 && _replaced.TryGetValue(new(sheet.Snapshot.Name, key.Row, key.Column), out var replaced)) return _known[key] = replaced;
        var content = sheet.Snapshot.Cells.GetValueOrDefault((key.Row, key.Column));
        if (content?.Formula is { } formula) return Follow(key, formula, content.ArrayRange is not null);
        foreach (var (area, master) in sheet.Arrays)
        {
            if (area.Contains(key.Row, key.Column) && master != key) return ReadElement(key, master, area);
        }

        return _known[key] = content?.Stored ?? default;
    }

    private CellValue Follow(CellKey key, string formula, bool isArray)
    {
        var again = _path.IndexOf(key);
        if (again >= 0) return CloseCircle(again);
        if (_waiting.Count > 1 && _path.Count > 0 && _waiting.Contains(key)) return CloseCircle(0);
        if (_path.Count >= DeepestPath)
        {
            Defer(key);
            return default;
        }

        var parse = _workbook.Parse(key, formula);
        if (parse.Formula is null)
        {
            Unsupported($"{Show(key)} holds no formula that can be read: {parse.Error!.Message}");
            return default;
        }

        var (outerOffset, outerNames) = (_offset, _nameDepth);
        (_offset, _nameDepth) = (default, 0);
        _path.Add(key);
        _circleFrom.Add(int.MaxValue);
        var result = Afresh(parse.Formula.Root, isArray);
        if (result.Reference is { } reference) result = ResolveIn(isArray, reference);
        var value = CellResult.Of(result);
        var circle = _circleFrom[^1];
        _path.RemoveAt(_path.Count - 1);
        _circleFrom.RemoveAt(_circleFrom.Count - 1);
        (_offset, _nameDepth) = (outerOffset, outerNames);
        if (Halted) return default;
        if (circle <= _path.Count) value = LeaveCircle(key, circle);
        if (isArray && result.Array is { } array) (_arrays ??= []).TryAdd(key, array);
        return _known[key] = value;
    }

    private FormulaValue ResolveIn(bool isArray, Reference reference) =>
        isArray && !reference.IsCell ? Array(reference) : Single(reference);

    /// <summary>A cell that an array formula in another cell fills.</summary>
    private CellValue ReadElement(CellKey key, CellKey master, Area area)
    {
        var first = Read(master);
        if (Halted) return default;
        var value = first;
        if (_arrays is not null && _arrays.TryGetValue(master, out var array))
            value = CellResult.Of(array.Broadcast(key.Row - area.Top, key.Column - area.Left));
        return _known[key] = value;
    }

    private string Show(CellKey key) => new CellAddress(_workbook.Workbook.Sheets[key.Sheet].Name, key.Row, key.Column).ToString();
}
