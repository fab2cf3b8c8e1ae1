using ClassKit.CellFormulas.Evaluating;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.NearMisses.Places;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.NearMisses;

/// <summary>Keeps one formula for each behaviour on some inputs.</summary>
/// <param name="inputs">The inputs.</param>
internal sealed class BehaviourSet(IReadOnlyList<Variant> inputs)
{
    private readonly List<double[]> _known = [];
    private readonly List<(IReadOnlyList<double?> Values, Tolerance Tolerance)> _right = [];

    /// <summary>Leaves out what behaves like this; with a tolerance, also what stays within it throughout.</summary>
    public void LeaveOut(IReadOnlyList<double?> values, Tolerance? tolerance)
    {
        if (tolerance is { } near)
            _right.Add((values, near));
        if (values.All(value => value is not null))
            _known.Add([.. values.Select(value => value!.Value)]);
    }

    /// <summary>The first of those that behave alike, with what it gives: numbers on all inputs, and not the same number on all.</summary>
    /// <param name="neighbours">Those told first before others.</param>
    /// <param name="columns">The same inputs.</param>
    public IEnumerable<TriedNeighbour> Distinct(IEnumerable<Neighbour> neighbours, NamedColumns columns)
    {
        foreach (var neighbour in neighbours)
        {
            if (columns.Spent > SearchBudget.OneKey)
                yield break;
            if (New(columns.Numbers(neighbour.Root)) is not { } values)
                continue;
            _known.Add(values);
            yield return new(neighbour, values);
        }
    }

    /// <summary>Values that nothing known gives; null if there are none, or something gives them.</summary>
    private double[]? New(ReadOnlySpan<double> values) => !values.IsEmpty && IsNew(values) ? values.ToArray() : null;

    private bool IsNew(ReadOnlySpan<double> values)
    {
        if (inputs.Count > 1 && Near.Computed.AllSame(values))
            return false;
        foreach (var (right, tolerance) in _right)
        {
            if (IsWithin(tolerance, right, values))
                return false;
        }
        foreach (var known in _known)
        {
            if (Near.Computed.Same(known, values))
                return false;
        }
        return true;
    }

    private static bool IsWithin(Tolerance tolerance, IReadOnlyList<double?> right, ReadOnlySpan<double> values)
    {
        for (var at = 0; at < values.Length; at++)
        {
            if (right[at] is not { } number || !tolerance.Accepts(number, values[at]))
                return false;
        }
        return true;
    }
}
