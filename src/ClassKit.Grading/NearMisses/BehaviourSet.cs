using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses;

/// <summary>Keeps one formula for each behaviour on some inputs.</summary>
/// <param name="inputs">The inputs.</param>
internal sealed class BehaviourSet(IReadOnlyList<Variant> inputs)
{
    private readonly List<IReadOnlyList<double>> _known = [];
    private readonly List<(IReadOnlyList<double?> Values, Tolerance Tolerance)> _right = [];

    /// <summary>Leaves out what behaves like this; with a tolerance, also what stays within it throughout.</summary>
    public void Leave(IReadOnlyList<double?> values, Tolerance? tolerance)
    {
        if (tolerance is { } near) _right.Add((values, near));
        if (values.All(value => value is not null)) _known.Add([.. values.Select(value => value!.Value)]);
    }

    /// <summary>The first of those that behave alike: numbers on all inputs, and not the same number on all.</summary>
    public IEnumerable<Neighbour> Distinct(IEnumerable<Neighbour> neighbours, IReadOnlyList<IReadOnlyDictionary<string, CellValue>> names)
    {
        List<NamedValues> evaluators = [.. names.Select(one => new NamedValues(one, SearchBudget.OneFormula))];
        foreach (var neighbour in neighbours)
        {
            if (evaluators.Sum(one => one.Spent) > SearchBudget.OneKey) yield break;
            if (Values(neighbour, evaluators) is not { } values || !IsNew(values)) continue;
            _known.Add(values);
            yield return neighbour;
        }
    }

    private static double[]? Values(Neighbour neighbour, List<NamedValues> evaluators)
    {
        var values = new double[evaluators.Count];
        for (var at = 0; at < values.Length; at++)
        {
            if (evaluators[at].Number(neighbour.Root) is not { } value) return null;
            values[at] = value;
        }
        return values;
    }

    private bool IsNew(double[] values)
    {
        if (inputs.Count > 1 && Array.TrueForAll(values, value => SameNumber.Is(values[0], value))) return false;
        if (_right.Exists(right => Agree(values, (at, value) => right.Values[at] is { } number && right.Tolerance.Accepts(number, value)))) return false;
        return !_known.Exists(known => Agree(values, (at, value) => SameNumber.Is(known[at], value)));
    }

    private static bool Agree(double[] values, Func<int, double, bool> agrees)
    {
        for (var at = 0; at < values.Length; at++)
        {
            if (!agrees(at, values[at])) return false;
        }
        return true;
    }
}
