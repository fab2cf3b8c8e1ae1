using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Calls;

/// <summary>
/// A function's view of its arguments: each is evaluated when first asked for and comes as the kind asked for.
/// The first argument that cannot be had as asked decides the result, so a function reads its arguments from the left and need not look at
/// errors.
/// </summary>
internal sealed class Call(IEvaluator evaluator)
{
    private FormulaNode[] _nodes = [];
    private FormulaValue[] _values = [];
    private bool[] _known = [];
    private (object Value, CellError? Error)?[] _derived = [];
    private readonly List<CellValue> _filled = [];
    private readonly List<double> _numbers = [];
    private CellError? _error;

    /// <summary>The evaluation that the call is part of.</summary>
    public Run Run { get; } = evaluator.Run;

    /// <summary>Where work is counted that the values handed out do not count by themselves.</summary>
    public Meter Meter => Run.Meter;

    /// <summary>Where cells come from, for the functions that look at more than values.</summary>
    public CellSource Cells => evaluator.Cells;

    /// <summary>What references hold.</summary>
    public Rectangles Rectangles => evaluator.Rectangles;

    /// <summary>True while an array formula, or an argument that is taken as an array, is evaluated.</summary>
    public bool WantsArrays => evaluator.WantsArrays;

    public FunctionRow Function { get; private set; } = null!;

    public int Count { get; private set; }

    /// <summary>The error that decides the result, if there is one already.</summary>
    public CellError? Error => _error;

    /// <summary>True once an argument asked for was an error, whatever the function made of it.</summary>
    public bool SawError { get; private set; }

    /// <summary>True once the result is decided; loops end on it.</summary>
    public bool Failed => _error is not null || Run.Halted;

    /// <summary>What a function returns that has failed. The error that came first decides, whatever it returns.</summary>
    public FormulaValue Failure => _error ?? CellError.Value;

    /// <summary>True for an argument left out, at the end or between two commas.</summary>
    public bool IsMissing(int at) => at >= Count || _nodes[at] is MissingNode;

    /// <summary>
    /// True for an argument that is not there at all: one left empty between commas, or after the last, is 0 to many functions.
    /// </summary>
    public bool IsAbsent(int at) => at >= Count;

    /// <summary>The syntax of an argument, for the functions that look at the reference and not at what is in it.</summary>
    public FormulaNode Node(int at) => _nodes[at];

    /// <summary>The value of a formula that the function has made, a reference unresolved.</summary>
    public FormulaValue Evaluate(FormulaNode made) => evaluator.Evaluate(made);

    /// <summary>The argument as it is, a reference unresolved.</summary>
    public FormulaValue Value(int at)
    {
        if (at >= Count)
            return default(CellValue);
        if (_known[at])
            return _values[at];
        var value = Function.ParameterAt(at) switch
        {
            Parameter.Value => evaluator.Operand(_nodes[at]),
            Parameter.Array => evaluator.InArrayMode(_nodes[at]),
            _ => evaluator.Evaluate(_nodes[at]),
        };
        _values[at] = value;
        _known[at] = true;
        SawError |= value.IsError;
        return value;
    }

    /// <summary>The argument as a single value; an error is a value too.</summary>
    public CellValue Any(int at)
    {
        var value = Value(at);
        if (value.IsScalar)
        {
            Meter.TakeFor(value.Scalar);
            return value.Scalar;
        }

        return value.Array is { } array ? array[0, 0] : Rectangles.Single(value.Reference!);
    }

    /// <summary>The argument as a single value: of a range or an array the top left one.</summary>
    public CellValue First(int at) =>
        Value(at).Reference is { } reference ? Cells.Read(reference.First.Sheet, reference.First.Top, reference.First.Left) : Any(at);

    /// <summary>The argument as a single value that is no error.</summary>
    public CellValue Scalar(int at)
    {
        var value = Any(at);
        if (value.IsError)
            Fail(value.Error);
        return value;
    }

    public double Number(int at)
    {
        if (Coercion.TryNumber(Any(at), Meter, out var number, out var error, Run.Dates))
            return number;
        Fail(error);
        return 0;
    }

    public double Number(int at, double whenMissing) => IsMissing(at) ? whenMissing : Number(at);

    /// <summary>A whole number, its fraction cut off. Far outside what an int holds it stays at the nearest int.</summary>
    public int Integer(int at) => (int)Math.Clamp(Numbers.Truncate(Number(at)), int.MinValue, int.MaxValue);

    public int Integer(int at, int whenMissing) => IsMissing(at) ? whenMissing : Integer(at);

    public string Text(int at)
    {
        if (Coercion.TryText(Any(at), Meter, out var text, out var error))
            return text;
        Fail(error);
        return "";
    }

    public string Text(int at, string whenMissing) => IsMissing(at) ? whenMissing : Text(at);

    public bool Logical(int at)
    {
        if (Coercion.TryLogical(Any(at), out var logical, out var error))
            return logical;
        Fail(error);
        return false;
    }

    public bool Logical(int at, bool whenMissing) => IsMissing(at) ? whenMissing : Logical(at);

    /// <summary>The argument as a rectangle of values, whatever it is.</summary>
    public ArrayValue Array(int at) => Rectangles.Array(Value(at));

    /// <summary>The one rectangle that the argument refers to; for anything else the result is <c>#VALUE!</c>.</summary>
    public Area? Area(int at)
    {
        var value = Value(at);
        if (value.Reference is { Areas.Length: 1 } reference)
            return reference.First;
        Fail(value.IsError ? value.Scalar.Error : CellError.Value);
        return null;
    }

    /// <summary>
    /// All values of the argument that are not blank, in reading order. The list is good until the next one is asked for.
    /// </summary>
    public List<CellValue> Filled(int at)
    {
        var value = Value(at);
        _filled.Clear();
        Rectangles.Collect(value, _filled);
        return _filled;
    }

    /// <summary>
    /// The numbers in the arguments from one on, as sums and averages see them: in references and arrays only numbers count,
    /// a value written into the argument itself must be a number or become one. The list is good until the next one is asked for.
    /// </summary>
    public List<double> NumbersFrom(int first)
    {
        _numbers.Clear();
        for (var at = first; at < Count && !Failed; at++)
            AddNumbers(at, _numbers);
        return _numbers;
    }

    public void AddNumbers(int at, List<double> numbers)
    {
        const int TicksPerNumber = 4;
        var value = Value(at);
        if (value.IsScalar)
        {
            numbers.Add(Number(at));
            return;
        }

        foreach (var cell in Filled(at))
        {
            if (cell.IsError)
            {
                Fail(cell.Error);
                return;
            }

            if (!cell.IsNumber)
                continue;
            Meter.Take(TicksPerNumber);
            numbers.Add(cell.Number);
        }
    }

    /// <summary>
    /// The numbers in an argument in ascending order. The list serves all elements that the function is applied to, and is not to be
    /// changed.
    /// </summary>
    public List<double> Sorted(int at) => Derived(at, () =>
        {
            var numbers = new List<double>();
            AddNumbers(at, numbers);
            return Sort(numbers);
        });

    /// <summary>Puts numbers into ascending order.</summary>
    public List<double> Sort(List<double> numbers)
    {
        Meter.TakeForSorting(numbers.Count);
        numbers.Sort();
        return numbers;
    }

    /// <summary>What is made of an argument, once for all elements of other arguments that the function is applied to.</summary>
    public T Derived<T>(int at, Func<T> make)
        where T : class
    {
        if (_error is not null || at >= Count)
            return make();
        _derived[at] ??= (make(), _error);
        if (_derived[at]!.Value.Error is { } error)
            Fail(error);
        return (T)_derived[at]!.Value.Value;
    }

    /// <summary>Decides the result, unless it is decided already.</summary>
    public FormulaValue Fail(CellError error)
    {
        _error ??= error;
        return _error.Value;
    }

    internal void Start(FunctionRow function, IReadOnlyList<FormulaNode> arguments)
    {
        Function = function;
        Count = arguments.Count;
        _error = null;
        SawError = false;
        if (_nodes.Length < Count)
        {
            _nodes = new FormulaNode[Math.Max(4, Count)];
            _values = new FormulaValue[_nodes.Length];
            _known = new bool[_nodes.Length];
            _derived = new (object, CellError?)?[_nodes.Length];
        }

        for (var at = 0; at < Count; at++)
        {
            _nodes[at] = arguments[at];
            _known[at] = false;
            _derived[at] = null;
        }
    }

    /// <summary>Puts one element of an array in an argument's place while the function is mapped over it.</summary>
    internal void Put(int at, FormulaValue value)
    {
        _values[at] = value;
        _known[at] = true;
        _derived[at] = null;
    }

    internal void ForgetError() => _error = null;
}
