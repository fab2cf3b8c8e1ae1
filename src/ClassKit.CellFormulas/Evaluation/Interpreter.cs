using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// Walks a syntax tree and computes its value. Where cells and names come from is for those who derive from it.
/// What cannot be evaluated halts the whole evaluation: nothing is then said about the value, and no function can hide it.
/// </summary>
internal abstract partial class Interpreter
{
    private Dictionary<string, FormulaValue>? _bound;
    private bool _arrayMode;

    protected Interpreter(EvaluationLimits limits, DateSystem dates)
    {
        Limits = limits;
        Dates = dates;
        Meter = new(limits);
    }

    public EvaluationLimits Limits { get; }

    /// <summary>Where all work is counted.</summary>
    public Meter Meter { get; }

    /// <summary>From which day dates are counted.</summary>
    public DateSystem Dates { get; }

    /// <summary>True once there will be no value.</summary>
    public bool Halted { get; protected set; }

    public EvaluationStatus Status { get; private set; }

    /// <summary>Why there is no value, or what led to an error value.</summary>
    public string? Reason { get; protected set; }

    /// <summary>True if functions may come from macros.</summary>
    protected virtual bool HasMacros => false;

    /// <summary>True while an array formula, or an argument that is taken as an array, is evaluated.</summary>
    public bool WantsArrays => _arrayMode;

    /// <summary>Row and column of the cell whose formula is evaluated; null if it is in no cell.</summary>
    public abstract (int Row, int Column)? Place { get; }

    /// <summary>The value of a cell.</summary>
    public abstract CellValue Read(int sheet, int row, int column);

    /// <summary>The part of an area outside of which all is blank; null if all of it is.</summary>
    public abstract Area? Used(Area area);

    /// <summary>The filled cells of an area in reading order.</summary>
    public abstract void Collect(Area area, List<CellValue> into);

    /// <summary>The sheet's index, or -1.</summary>
    public abstract int SheetIndex(string? name);

    /// <summary>How many sheets there are.</summary>
    public virtual int SheetCount => 1;

    /// <summary>The formula in a cell, without <c>=</c>; null if it has none.</summary>
    public virtual string? FormulaText(int sheet, int row, int column) => null;

    /// <summary>True for a row that does not show, or only if a filter is the reason.</summary>
    public virtual bool IsHidden(int sheet, int row, bool byFilterOnly) => false;

    /// <summary>True for a cell whose own formula is a subtotal, which other subtotals leave out.</summary>
    public bool IsSubtotal(int sheet, int row, int column)
    {
        if (FormulaText(sheet, row, column) is not { } text) return false;
        Meter.TakeForCharacters(text.Length);
        return text.Contains("SUBTOTAL(", StringComparison.OrdinalIgnoreCase) || text.Contains("AGGREGATE(", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>What a name that LET does not bind stands for.</summary>
    protected abstract FormulaValue Name(NameNode name);

    /// <summary>True for a name that stands for nothing.</summary>
    protected abstract bool IsUnknown(NameNode name);

    /// <summary>The value of a name that stands for one cell; false for any other name.</summary>
    protected virtual bool TryCell(NameNode name, out CellValue value)
    {
        value = default;
        return false;
    }

    /// <summary>The values of an area read before; null if they have to be read.</summary>
    protected virtual ArrayValue? Recall(Area area) => null;

    /// <summary>Keeps the values of an area for the next who wants them.</summary>
    protected virtual void Remember(Area area, ArrayValue values)
    {
    }

    /// <summary>The cells of a part of a table.</summary>
    protected virtual FormulaValue Table(TableNode node) => Unsupported($"there are no tables here, and `{node.Text}` refers to one");

    /// <summary>What the formula in a cell fills.</summary>
    protected abstract FormulaValue Spill(Reference anchor);

    /// <summary>How far the references of a defined name are moved from where they are written.</summary>
    protected virtual (int Rows, int Columns) Offset => default;

    /// <summary>Makes ready for an evaluation with its own count of steps.</summary>
    protected void Start(CancellationToken cancellation)
    {
        Meter.Start(cancellation);
        (_arrayMode, _bound) = (false, null);
        (Halted, Status, Reason) = (false, EvaluationStatus.Computed, null);
    }

    /// <summary>Computes a value, or ends without one where that takes too many steps.</summary>
    protected TValue Within<TValue>(Func<TValue> compute, TValue otherwise)
    {
        try
        {
            return compute();
        }
        catch (Exception thrown) when ((thrown as OutOfStepsException ?? thrown.InnerException as OutOfStepsException) is { } end)
        {
            // What a comparison throws comes out of sorting inside of another exception.
            Halted = false;
            Unsupported(end.Message);
            return otherwise;
        }
        catch (InvalidOperationException sorting) when (sorting.InnerException is OperationCanceledException cancelled)
        {
            throw new OperationCanceledException(cancelled.Message, cancelled, cancelled.CancellationToken);
        }
    }

    /// <summary>Ends the evaluation without a value.</summary>
    public FormulaValue Halt(EvaluationStatus status, string reason)
    {
        if (Halted) return CellError.Value;
        Halted = true;
        Status = status;
        Reason = reason;
        return CellError.Value;
    }

    public FormulaValue Unsupported(string what) => Halt(EvaluationStatus.Unsupported, what);

    /// <summary>Counts work in steps; at the limit the evaluation ends.</summary>
    public void Spend(long steps) => Meter.Spend(steps);

    /// <summary>The value of a part of a formula, a reference unresolved.</summary>
    public FormulaValue Evaluate(FormulaNode node)
    {
        Spend(1);
        if (Halted) return CellError.Value;
        switch (node)
        {
            case NumberNode number:
                return CellValue.FromNumber(number.Value);
            case ReferenceNode reference:
                return Locate(reference);
            case NameNode name:
                return name.Sheet is null && _bound is not null && _bound.TryGetValue(name.Name, out var bound) ? bound : Name(name);
            case BinaryNode binary:
                return binary.Operator <= BinaryOperator.Union ? Combine(binary) : Compute(binary);
            case CallNode call:
                return Apply(call);
            case GroupNode group:
                return Evaluate(group.Inner);
            case PrefixNode prefix:
                return Apply(prefix);
            case PercentNode percent:
                return Map(Operand(percent.Operand), Operators.Percent);
            case TextNode text:
                return text.Value;
            case LogicalNode logical:
                return logical.Value;
            case ErrorNode error:
                return error.Error;
            case ArrayNode array:
                return new ArrayValue(Meter, array.Rows, array.Columns, [.. array.Elements]);
            case SpillNode spill:
                var anchor = Evaluate(spill.Operand);
                return anchor.Reference is { IsCell: true } cell ? Spill(cell) : anchor.IsError ? anchor : CellError.Reference;
            case TableNode table:
                return Table(table);
            case UnsupportedNode unsupported:
                return Unsupported($"{unsupported.Construct} (`{unsupported.Text}`) is not evaluated");
            default:
                return default(CellValue);
        }
    }

    /// <summary>The value of an operand: a single value or an array, never a reference.</summary>
    public FormulaValue Operand(FormulaNode node)
    {
        switch (node)
        {
            case NumberNode number:
                Spend(1);
                return CellValue.FromNumber(number.Value);
            case ReferenceNode { Last: null } reference:
                return Cell(reference);
            case NameNode name when _bound is null && TryCell(name, out var cell):
                return cell;
        }

        var value = Evaluate(node);
        return value.Reference is { } located ? Resolve(located) : value;
    }

    /// <summary>The value of a formula of its own, which does not see what LET binds around the place that asks for it.</summary>
    protected FormulaValue Afresh(FormulaNode root, bool arrayMode)
    {
        var (bound, mode) = (_bound, _arrayMode);
        (_bound, _arrayMode) = (null, arrayMode);
        var value = Evaluate(root);
        (_bound, _arrayMode) = (bound, mode);
        return value;
    }

    /// <summary>As <see cref="Operand"/>, with operators inside working element by element.</summary>
    public FormulaValue InArrayMode(FormulaNode node)
    {
        var before = _arrayMode;
        _arrayMode = true;
        var value = Evaluate(node);
        _arrayMode = before;
        return value;
    }

    /// <summary>What a reference gives where a value is wanted.</summary>
    public FormulaValue Resolve(Reference reference)
    {
        if (_arrayMode && !reference.IsCell) return reference.Areas.Length == 1 ? Array(reference) : CellError.Value;
        return Single(reference);
    }

    /// <summary>The one cell of a reference that lies in the row or column of the formula.</summary>
    /// <remarks>OpenFormula 1.3, 6.3.3 (implied intersection).</remarks>
    public CellValue Single(Reference reference)
    {
        if (reference.Areas.Length > 1) return CellValue.FromError(CellError.Value);
        var area = reference.First;
        if (area.IsCell) return Read(area.Sheet, area.Top, area.Left);
        if (Place is not var (row, column)) return CellValue.FromError(CellError.Value);
        if (area.Columns == 1 && row >= area.Top && row <= area.Bottom) return Read(area.Sheet, row, area.Left);
        if (area.Rows == 1 && column >= area.Left && column <= area.Right) return Read(area.Sheet, area.Top, column);
        return CellValue.FromError(CellError.Value);
    }

    /// <summary>Any value as a rectangle.</summary>
    public ArrayValue Array(FormulaValue value)
    {
        if (value.Array is { } array) return array;
        if (value.Reference is not { } reference) return new ArrayValue(Meter, 1, 1, [value.Scalar]);
        return reference.Areas.Length == 1 ? Array(reference) : new ArrayValue(Meter, 1, 1, [CellValue.FromError(CellError.Value)]);
    }

    /// <summary>All filled cells of a value, in reading order.</summary>
    public void Collect(FormulaValue value, List<CellValue> into)
    {
        if (value.Reference is { } reference)
        {
            foreach (var area in reference.Areas) Collect(area, into);
            return;
        }

        if (value.Array is not { } array)
        {
            if (!value.Scalar.IsBlank) into.Add(value.Scalar);
            return;
        }

        for (var row = 0; row < array.StoredRows; row++)
        {
            for (var column = 0; column < array.StoredColumns; column++)
            {
                if (array[row, column] is { IsBlank: false } cell) into.Add(cell);
            }
        }
    }

    /// <summary>True if an array of that many cells is too large; the evaluation has ended then.</summary>
    public bool TooLarge(long cells)
    {
        if (cells <= Limits.ArrayCells)
        {
            Spend(cells);
            return Halted;
        }

        Unsupported($"an array of more than {Limits.ArrayCells} cells");
        return true;
    }

    private ArrayValue Array(Reference reference)
    {
        var area = reference.First;
        if (Recall(area) is { } known) return known;
        if (Used(area) is not { } used) return new(Meter, area.Rows, area.Columns, [], 0, 0);

        // Rows and columns before the first used one are stored, so that places stay what they are.
        var (rows, columns) = (used.Bottom - area.Top + 1, used.Right - area.Left + 1);
        if (TooLarge((long)rows * columns)) return new(Meter, area.Rows, area.Columns, [], 0, 0);
        var cells = new CellValue[rows * columns];
        for (var row = used.Top; row <= used.Bottom && !Halted; row++)
        {
            for (var column = used.Left; column <= used.Right; column++)
                cells[(row - area.Top) * columns + (column - area.Left)] = Read(area.Sheet, row, column);
        }

        var array = new ArrayValue(Meter, area.Rows, area.Columns, cells, rows, columns);
        if (!Halted) Remember(area, array);
        return array;
    }
}
