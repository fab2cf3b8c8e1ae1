using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;

namespace ClassKit.Grading.Judging.Slips;

/// <summary>
/// What a part's key gives for some inputs when earlier answers are rounded before it uses them. Many roundings are tried, so the names are
/// put together once.
/// </summary>
internal sealed class RoundedEarlier
{
    private readonly Part _part;
    private readonly IReadOnlyDictionary<string, double> _earlier;
    private readonly Dictionary<string, CellValue> _names;
    private readonly NamedValues _values;

    /// <param name="part">The part.</param>
    /// <param name="givens">The inputs.</param>
    /// <param name="earlier">The earlier answers by the ids of their parts, not rounded.</param>
    public RoundedEarlier(Part part, IReadOnlyDictionary<string, decimal> givens, IReadOnlyDictionary<string, double> earlier)
    {
        (_part, _earlier, _names) = (part, earlier, KeyValues.Names(givens, earlier));
        _values = new(_names);
    }

    /// <summary>The answer on rounded earlier ones; null if it is no number.</summary>
    /// <param name="rounding">How they are rounded.</param>
    /// <param name="rounded">Which.</param>
    public double? Answer(Rounding rounding, IReadOnlyList<Part> rounded)
    {
        foreach (var part in rounded)
            _names[part.Id] = CellValue.FromNumber(rounding.For(part).Of(_earlier[part.Id]));
        var answer = _values.Number(_part.Key.Root);
        foreach (var part in rounded)
            _names[part.Id] = CellValue.FromNumber(_earlier[part.Id]);
        return answer;
    }
}
