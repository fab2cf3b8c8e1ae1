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
    private const int KeptCapacity = 500;

    /// <summary>How much of a formula can be read in the time of a step.</summary>
    private const int CharactersPerStep = 32;

    private readonly PreparedWorkbook _workbook;
    private Dictionary<CellKey, CellValue> _known = new(16);
    private readonly List<CellKey> _path = [];
    private readonly Stack<CellKey> _waiting = new();
    private readonly HashSet<CellKey> _awaited = [];
    private Replacements _replaced = Replacements.None;
    private Dictionary<CellKey, ArrayValue>? _arrays;
    private Dictionary<CellKey, string>? _reasons;

    // Cells that were found to have no value, so that none of those that need them look again.
    private Dictionary<CellKey, (EvaluationStatus Status, string Reason)>? _ends;
    private (int Rows, int Columns) _offset;
    private CellKey? _deferred;
    private Dictionary<Area, ArrayValue>? _areas;
    private int _areaCells;
    private int _nameDepth;

    // The names being computed, and which of them are those of the cell on top of the path.
    private readonly List<CellFormula> _naming = [];
    private int _namingFrom;

    public WorkbookInterpreter(PreparedWorkbook workbook, EvaluationLimits limits)
        : base(limits, workbook.Workbook.Dates) => _workbook = workbook;

    public override (int Row, int Column)? Place => _path.Count > 0 ? (_path[^1].Row, _path[^1].Column) : null;

    protected override (int Rows, int Columns) Offset => _offset;

    protected override bool HasMacros => _workbook.Workbook.HasMacros;

    private int CurrentSheet => _path[^1].Sheet;

    /// <summary>Forgets all values and takes up other inputs.</summary>
    /// <param name="replaced">The inputs.</param>
    /// <param name="allowed">How many steps may be taken.</param>
    public void Begin(Replacements replaced, long allowed)
    {
        _replaced = replaced;

        // Clearing costs by the largest size ever reached.
        if (_known.Count > KeptCapacity) _known = new(16);
        else _known.Clear();
        (_arrays, _reasons, _leadsTo, _ends) = (null, null, null, null);
        (_areas, _areaCells) = (null, 0);
        Meter.Reset(allowed);
    }

    /// <summary>The value of a cell. Values known from earlier cells since <see cref="Begin"/> are used again.</summary>
    public Evaluation Evaluate(CellKey target, Func<IReadOnlyCollection<CellAddress>>? dependencies, CancellationToken cancellation)
    {
        Start(cancellation);
        _path.Clear();
        _circleFrom.Clear();
        _waiting.Clear();
        _awaited.Clear();
        Await(target);
        (_deferred, _offset, _nameDepth, _namingFrom) = (null, default, 0, 0);
        _naming.Clear();
        var value = Within(ReadAwaited, CellValue.Blank);
        var cells = dependencies is null ? new CellAddressView(KnownExcept(target), _workbook.Workbook) : new CellAddressView(dependencies);
        if (Halted) return new(Status, CellValue.Blank, Reason, cells);
        return new(EvaluationStatus.Computed, value, value.IsError ? Reason : null, cells);
    }

    private CellValue ReadAwaited()
    {
        var value = CellValue.Blank;
        while (_waiting.Count > 0 && !Halted)
        {
            value = Read(_waiting.Peek());
            if (_deferred is { } deeper)
            {
                _deferred = null;
                Halted = false;
                Await(deeper);
            }
            else
            {
                _awaited.Remove(_waiting.Pop());
            }
        }

        return value;
    }

    private void Await(CellKey cell)
    {
        _waiting.Push(cell);
        _awaited.Add(cell);
    }

    private CellKey[] KnownExcept(CellKey target)
    {
        var keys = new CellKey[_known.Count - (_known.ContainsKey(target) ? 1 : 0)];
        var at = 0;
        foreach (var key in _known.Keys)
        {
            if (key != target) keys[at++] = key;
        }

        return keys;
    }

    public override CellValue Read(int sheet, int row, int column) => Read(new CellKey(sheet, row, column));

    public override int SheetIndex(string? name)
    {
        if (name is null) return CurrentSheet;
        var sheet = _workbook.FindSheet(name);
        if (sheet < 0) Reason ??= $"there is no sheet called {name}";
        return sheet;
    }

    public override int SheetCount => _workbook.Sheets.Length;

    public override string? FormulaText(int sheet, int row, int column) =>
        _replaced.TryGet(new(sheet, row, column), _workbook.Sheets[sheet].Snapshot.Name, out _)
            ? null : _workbook.Sheets[sheet].Snapshot.Cells.GetValueOrDefault((row, column))?.Formula;

    public override bool IsHidden(int sheet, int row, bool byFilterOnly)
    {
        var snapshot = _workbook.Sheets[sheet].Snapshot;
        return snapshot.HiddenRows.Contains(row) && (!byFilterOnly || (snapshot.FilteredRows is var (first, last) && row >= first && row <= last));
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
            if (known.IsError) Recall(key);
            return known;
        }

        if (_ends is not null && _ends.TryGetValue(key, out var end))
        {
            Halt(end.Status, end.Reason);
            return default;
        }

        var sheet = _workbook.Sheets[key.Sheet];
        if (_replaced.TryGet(key, sheet.Snapshot.Name, out var replaced)) return _known[key] = replaced;
        var content = sheet.Snapshot.Cells.GetValueOrDefault((key.Row, key.Column));
        if (content?.Formula is { } formula) return Follow(key, formula, content.ArrayRange is not null);
        Spend(sheet.Arrays.Length);
        foreach (var (area, master) in sheet.Arrays)
        {
            if (area.Contains(key.Row, key.Column) && master != key) return ReadElement(key, master, area);
        }

        if (content is null) return _known[key] = default;
        Meter.TakeFor(content.Stored);
        return _known[key] = content.Stored;
    }

    private CellValue Follow(CellKey key, string formula, bool isArray)
    {
        var again = _path.IndexOf(key);
        if (again >= 0) return CloseCircle(again);
        if (_waiting.Count > 1 && _path.Count > 0 && _awaited.Contains(key)) return CloseCircle(0);
        if (_path.Count >= DeepestPath)
        {
            Defer(key);
            return default;
        }

        Spend(formula.Length / CharactersPerStep);
        var parse = _workbook.Parse(key, formula);
        if (parse.Formula is null)
        {
            Unsupported($"{Show(key)} holds no formula that can be read: {parse.Error!.Message}");
            return default;
        }

        var (outerOffset, outerNames, outerFrom) = (_offset, _nameDepth, _namingFrom);
        (_offset, _nameDepth, _namingFrom) = (default, 0, _naming.Count);
        _path.Add(key);
        _circleFrom.Add(int.MaxValue);
        var result = Afresh(parse.Formula.Root, isArray);
        if (result.Reference is { } reference) result = ResolveIn(isArray, reference);
        var value = CellResult.Of(result);
        var circle = _circleFrom[^1];
        _path.RemoveAt(_path.Count - 1);
        _circleFrom.RemoveAt(_circleFrom.Count - 1);
        (_offset, _nameDepth, _namingFrom) = (outerOffset, outerNames, outerFrom);
        if (Halted)
        {
            if (_deferred is null && Status != EvaluationStatus.Computed) (_ends ??= [])[key] = (Status, Reason!);
            return default;
        }

        if (circle <= _path.Count) value = LeaveCircle(key, circle);
        if (isArray && result.Array is { } array) (_arrays ??= []).TryAdd(key, array);
        if (value.IsError && Reason is not null) (_reasons ??= [])[key] = Reason;
        return _known[key] = value;
    }

    /// <summary>A known error comes with its reason and, while its circle is still open, puts its reader into the circle.</summary>
    private void Recall(CellKey key)
    {
        if (_reasons is not null && _reasons.TryGetValue(key, out var reason)) Reason ??= reason;
        JoinCircle(key);
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
