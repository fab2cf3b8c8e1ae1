using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>The names that LET binds, each from its value's end on to the end of its call.</summary>
internal sealed class LetBindings
{
    private Dictionary<string, FormulaValue>? _bound;

    /// <summary>True where nothing was ever bound.</summary>
    public bool IsEmpty => _bound is null;

    public bool TryGet(NameNode name, out FormulaValue value)
    {
        value = default;
        return name.Sheet is null && _bound is not null && _bound.TryGetValue(name.Name, out value);
    }

    public bool Binds(NameNode name) => name.Sheet is null && _bound?.ContainsKey(name.Name) == true;

    /// <summary>Takes all names out of sight of a formula of its own.</summary>
    /// <returns>What <see cref="Show"/> brings back.</returns>
    public Dictionary<string, FormulaValue>? Hide()
    {
        var bound = _bound;
        _bound = null;
        return bound;
    }

    public void Show(Dictionary<string, FormulaValue>? hidden) => _bound = hidden;

    /// <summary><c>LET(name, value, ..., result)</c>.</summary>
    public FormulaValue Evaluate(CallNode node, IEvaluator evaluator)
    {
        if (node.Arguments.Count < 3 || node.Arguments.Count % 2 == 0)
            return CellError.Value;
        var hidden = new List<(string Name, FormulaValue? Value)>();
        FormulaValue result = CellError.Name;
        var bound = _bound ??= new(StringComparer.OrdinalIgnoreCase);
        for (var at = 0; at < node.Arguments.Count; at += 2)
        {
            if (at == node.Arguments.Count - 1)
            {
                result = evaluator.Evaluate(node.Arguments[at]);
                break;
            }

            if (node.Arguments[at] is not NameNode { Sheet: null } name)
                break;
            var value = evaluator.Evaluate(node.Arguments[at + 1]);
            hidden.Add((name.Name, bound.TryGetValue(name.Name, out var outer) ? outer : (FormulaValue?)null));
            bound[name.Name] = value;
        }

        for (var at = hidden.Count - 1; at >= 0; at--)
        {
            if (hidden[at].Value is { } outer)
                bound[hidden[at].Name] = outer;
            else
                bound.Remove(hidden[at].Name);
        }

        return result;
    }
}
