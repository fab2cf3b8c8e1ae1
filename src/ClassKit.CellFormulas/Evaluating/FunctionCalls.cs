using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Functions;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Calls functions, each once or, where an argument is an array that it does not expect, once for each element.</summary>
internal sealed class FunctionCalls(IEvaluator evaluator, NameSource names, LetBindings let)
{
    private readonly Run _run = evaluator.Run;
    private readonly Stack<Call> _idle = new();

    /// <summary>The value of a call.</summary>
    public FormulaValue Apply(CallNode node)
    {
        var function = FunctionRegistry.Find(node.Name);
        if (function is null)
            return Unknown(node.Name);
        if (node.Arguments.Count < function.Least || node.Arguments.Count > function.Most)
        {
            _run.Reason ??= new Obstacle.Arguments(
                function.Name,
                function.Least,
                function.Most == FunctionRow.Many ? null : function.Most,
                node.Arguments.Count
            );
            return CellError.Value;
        }

        var call = _idle.Count > 0 ? _idle.Pop() : new(evaluator);
        call.Start(function, node.Arguments);
        var result = Invoke(call, function);
        _idle.Push(call);
        return result;
    }

    private FormulaValue Invoke(Call call, FunctionRow function)
    {
        var eager = function.Has(FunctionTraits.Lazy) ? Math.Min(1, call.Count) : call.Count;
        var (rows, columns) = (1, 1);
        for (var at = 0; at < eager && !_run.Halted; at++)
        {
            if (function.ParameterAt(at) != Parameter.Value || call.Value(at).Array is not { } array)
                continue;
            rows = Math.Max(rows, array.Rows);
            columns = Math.Max(columns, array.Columns);
        }

        if (_run.Halted)
            return CellError.Value;
        return rows == 1 && columns == 1 ? RunOnce(call, function) : Map(call, function, rows, columns);
    }

    private FormulaValue RunOnce(Call call, FunctionRow function)
    {
        _run.Spend(1);
        var result = function.Run(call);
        if (result.IsScalar)
            _run.Meter.TakeForMade(result.Scalar);
        if (_run.Halted)
            return CellError.Value;
        if (call.Error is { } error)
            result = error;
        return (result.IsError || call.SawError) && !function.Has(FunctionTraits.Lazy | FunctionTraits.SeesErrors) && IsNameless(call)
            ? CellError.Name
            : result;
    }

    /// <summary>
    /// Whether an unknown name or function among the arguments decides the result. Programs compute arguments from the left before they
    /// look into ranges and before they turn texts into numbers, so that only an error computed further left comes before it.
    /// </summary>
    private bool IsNameless(Call call)
    {
        for (var at = 0; at < call.Count; at++)
        {
            if (NamesNothing(call.Node(at)))
                return true;
            if (call.Node(at) is not (ReferenceNode or NameNode) && call.Value(at).IsError)
                return false;
        }

        return false;
    }

    private bool NamesNothing(FormulaNode node)
    {
        _run.Meter.Take(1);
        return node switch
        {
            NameNode name => !let.Binds(name) && names.IsUnknown(name),
            GroupNode group => NamesNothing(group.Inner),
            CallNode call => call.Name != "LET" && FunctionRegistry.Find(call.Name) is null,
            _ => false,
        };
    }

    /// <summary>Applies the function once for each element of its array arguments.</summary>
    private FormulaValue Map(Call call, FunctionRow function, int rows, int columns)
    {
        var arrays = new ArrayValue?[call.Count];
        var chosen = function.Has(FunctionTraits.Lazy);
        for (var at = 0; at < call.Count; at++)
        {
            var value = call.Value(at);
            if (function.ParameterAt(at) == Parameter.Value || chosen)
                arrays[at] = value.Array ?? (chosen && value.Reference is { IsCell: false } area ? evaluator.Rectangles.Array(area) : null);
            if (arrays[at] is not { } array)
                continue;
            rows = Math.Max(rows, array.Rows);
            columns = Math.Max(columns, array.Columns);
        }

        if (_run.Halted || _run.TooLarge((long)rows * columns))
            return CellError.Value;
        var result = new ArrayValue(_run.Meter, rows, columns);
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns && !_run.Halted; column++)
            {
                for (var at = 0; at < arrays.Length; at++)
                {
                    if (arrays[at] is { } array)
                        call.Put(at, array.Broadcast(row, column));
                }

                call.ForgetError();
                var element = RunOnce(call, function);
                result[row, column] = element.IsScalar ? element.Scalar : evaluator.Rectangles.Array(element)[0, 0];
            }
        }

        return result;
    }

    private FormulaValue Unknown(string name)
    {
        if (names.HasMacros)
            return _run.Unsupported(new Obstacle.MayBeMacro(name));
        if (KnownElsewhere.Contains(name) || IsOfAnAddIn(name))
            return _run.Unsupported(new Obstacle.UnknownFunction(name));
        _run.Reason ??= new Obstacle.NoFunction(name);
        return CellError.Name;
    }

    /// <summary>
    /// True for a name behind a prefix that is no function's own: <c>_xll.F</c>, <c>COM.VENDOR.F</c>. What such a function does only its
    /// maker knows.
    /// </summary>
    private static bool IsOfAnAddIn(string name)
    {
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        return name.StartsWith("_XL", StringComparison.Ordinal) || (dot > 0 && !FunctionRegistry.IsFamily(name[..dot]));
    }
}
