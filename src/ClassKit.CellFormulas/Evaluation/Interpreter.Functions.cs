using ClassKit.CellFormulas.Functions;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Calls of functions.</summary>
internal abstract partial class Interpreter
{
    private readonly Stack<Call> _idle = new();

    private FormulaValue Apply(CallNode node)
    {
        if (!System.Runtime.CompilerServices.RuntimeHelpers.TryEnsureSufficientExecutionStack()) return TooDeep();
        if (node.Name == "LET") return Let(node);
        var function = FunctionRegistry.Find(node.Name);
        if (function is null) return Unknown(node.Name);
        if (node.Arguments.Count < function.Least || node.Arguments.Count > function.Most)
        {
            Reason ??= $"{function.Name} takes {Arity(function)}, not {node.Arguments.Count}";
            return CellError.Value;
        }

        var call = _idle.Count > 0 ? _idle.Pop() : new(this);
        call.Start(function, node.Arguments);
        var result = Invoke(call, function);
        _idle.Push(call);
        return result;
    }

    private FormulaValue Invoke(Call call, FunctionRow function)
    {
        var eager = function.Has(FunctionTraits.Lazy) ? Math.Min(1, call.Count) : call.Count;
        var (rows, columns) = (1, 1);
        for (var at = 0; at < eager && !Halted; at++)
        {
            if (function.ParameterAt(at) != Parameter.Value || call.Value(at).Array is not { } array) continue;
            rows = Math.Max(rows, array.Rows);
            columns = Math.Max(columns, array.Columns);
        }

        if (Halted) return CellError.Value;
        return rows == 1 && columns == 1 ? Run(call, function) : Map(call, function, rows, columns);
    }

    private FormulaValue Run(Call call, FunctionRow function)
    {
        Spend(1);
        var result = function.Run(call);
        if (result.IsScalar) Meter.TakeForMade(result.Scalar);
        if (Halted) return CellError.Value;
        if (call.Error is { } error) result = error;
        return (result.IsError || call.SawError) && !function.Has(FunctionTraits.Lazy | FunctionTraits.SeesErrors) && IsNameless(call) ? CellError.Name : result;
    }

    /// <summary>
    /// Whether an unknown name or function among the arguments decides the result. Programs compute arguments from the left before they look into ranges and before they
    /// turn texts into numbers, so that only an error computed further left comes before it.
    /// </summary>
    private bool IsNameless(Call call)
    {
        for (var at = 0; at < call.Count; at++)
        {
            if (NamesNothing(call.Node(at))) return true;
            if (call.Node(at) is not (ReferenceNode or NameNode) && call.Value(at).IsError) return false;
        }

        return false;
    }

    private bool NamesNothing(FormulaNode node)
    {
        Meter.Take(1);
        return node switch
        {
            NameNode name => (name.Sheet is not null || _bound?.ContainsKey(name.Name) != true) && IsUnknown(name),
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
            if (function.ParameterAt(at) == Parameter.Value || chosen) arrays[at] = value.Array ?? (chosen && value.Reference is { IsCell: false } area ? Array(area) : null);
            if (arrays[at] is not { } array) continue;
            rows = Math.Max(rows, array.Rows);
            columns = Math.Max(columns, array.Columns);
        }

        if (Halted || TooLarge((long)rows * columns)) return CellError.Value;
        var result = new ArrayValue(Meter, rows, columns);
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns && !Halted; column++)
            {
                for (var at = 0; at < arrays.Length; at++)
                {
                    if (arrays[at] is { } array) call.Put(at, array.Broadcast(row, column));
                }

                call.ForgetError();
                var element = Run(call, function);
                result[row, column] = element.IsScalar ? element.Scalar : Array(element)[0, 0];
            }
        }

        return result;
    }

    private FormulaValue Unknown(string name)
    {
        if (HasMacros) return Unsupported($"the function {name} may be a macro, which is not evaluated");
        if (KnownElsewhere.Contains(name) || IsOfAnAddIn(name)) return Unsupported($"the function {name} is not evaluated");
        Reason ??= $"there is no function called {name}";
        return CellError.Name;
    }

    /// <summary>True for a name behind a prefix that is no function's own: <c>_xll.F</c>, <c>COM.VENDOR.F</c>. What such a function does only its maker knows.</summary>
    private static bool IsOfAnAddIn(string name)
    {
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        return name.StartsWith("_XL", StringComparison.Ordinal) || (dot > 0 && !FunctionRegistry.IsFamily(name[..dot]));
    }

    private static string Arity(FunctionRow function) => (function.Least, function.Most) switch
    {
        var (least, most) when least == most => least == 1 ? "1 argument" : $"{least} arguments",
        (var least, FunctionRow.Many) => $"at least {least} arguments",
        var (least, most) => $"{least} to {most} arguments",
    };

    /// <summary><c>LET(name, value, ..., result)</c>: each name holds from its value's end on.</summary>
    private FormulaValue Let(CallNode node)
    {
        if (node.Arguments.Count < 3 || node.Arguments.Count % 2 == 0) return CellError.Value;
        var hidden = new List<(string Name, FormulaValue? Value)>();
        FormulaValue result = CellError.Name;
        var bound = _bound ??= new(StringComparer.OrdinalIgnoreCase);
        for (var at = 0; at < node.Arguments.Count; at += 2)
        {
            if (at == node.Arguments.Count - 1)
            {
                result = Evaluate(node.Arguments[at]);
                break;
            }

            if (node.Arguments[at] is not NameNode { Sheet: null } name) break;
            var value = Evaluate(node.Arguments[at + 1]);
            hidden.Add((name.Name, bound.TryGetValue(name.Name, out var outer) ? outer : (FormulaValue?)null));
            bound[name.Name] = value;
        }

        for (var at = hidden.Count - 1; at >= 0; at--)
        {
            if (hidden[at].Value is { } outer) bound[hidden[at].Name] = outer;
            else bound.Remove(hidden[at].Name);
        }

        return result;
    }
}
