using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.NearMisses.Places;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.NearMisses;

/// <summary>
/// What all who wrote one wrong formula have in common: what it gives on the inputs of a part's table, and the neighbours that give the
/// same there. Then a student's own numbers alone are left to be tried.
/// </summary>
internal sealed class TriedFormula
{
    private readonly CellFormula _formula;
    private readonly double[] _values;
    private readonly HashSet<double> _different;
    private readonly Lazy<IReadOnlyList<(Neighbour Neighbour, int? Decimals, Neighbour Told)>> _one;
    private readonly Lazy<IReadOnlyList<Neighbour>> _two;

    /// <param name="table">The part's neighbours.</param>
    /// <param name="formula">The formula over the exercise's names.</param>
    public TriedFormula(NeighbourTable table, CellFormula formula)
    {
        _formula = formula;
        _values = [.. new NamedColumns(table.Inputs, SearchBudget.OneFormula).Numbers(formula.Root)];
        _different = [.. _values.Select(NearMissSearch.Noticed)];
        _one = new(() => [.. OneEdit(table)]);
        _two = new(() =>
            [.. table.Two.Giving(_values[0]).Where(two => NearMissSearch.Gives(two, table.Inputs, _values, Near.Computed.Same))]
        );
    }

    /// <summary>
    /// The first neighbour, one edit away or else two, that gives what the formula gives, on a student's own numbers too; null if none
    /// does.
    /// </summary>
    /// <param name="dealt">What names stand for on what the student was dealt.</param>
    public Neighbour? Like(IReadOnlyDictionary<string, CellValue> dealt)
    {
        var names = new NamedValues(dealt, SearchBudget.OneFormula);
        if (_values.Length == 0 || names.Number(_formula.Root) is not { } own)
            return null;
        var different = _different.Count + (_different.Contains(NearMissSearch.Noticed(own)) ? 0 : 1);
        bool Gives(Neighbour neighbour, int? decimals) =>
            names.Number(neighbour.Root) is { } given && Near.Computed.Same(NearMissSearch.Round(given, decimals), own);
        return (
            different < Math.Min(NearMissSearch.FewestForOne, _values.Length + 1)
                ? null
                : _one.Value.FirstOrDefault(one => Gives(one.Neighbour, one.Decimals)).Told
        ) ?? (different < NearMissSearch.FewestForTwo ? null : _two.Value.FirstOrDefault(two => Gives(two, null)));
    }

    private IEnumerable<(Neighbour Neighbour, int? Decimals, Neighbour Told)> OneEdit(NeighbourTable table)
    {
        var near = table.Tried.Where(one => NearMissSearch.IsNear(one.Values[0], _values[0])).ToList();
        return near.Count == 0
            ? []
            : NearMissSearch.Rounded.SelectMany(decimals =>
                near.Where(one => GivesThroughout(one, decimals))
                    .Select(one => (one.Neighbour, decimals, table.Others.Of(_formula, one.Neighbour)))
            );
    }

    private bool GivesThroughout(TriedNeighbour one, int? decimals)
    {
        for (var at = 0; at < _values.Length; at++)
        {
            if (!Near.Computed.Same(NearMissSearch.Round(one.Values[at], decimals), _values[at]))
                return false;
        }
        return true;
    }
}
