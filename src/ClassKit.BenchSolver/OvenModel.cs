using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using Google.OrTools.Sat;

namespace ClassKit.BenchSolver;

/// <summary>What bakes in which oven: places, temperatures, doors that stay shut.</summary>
internal sealed class OvenModel
{
    /// <summary>A bake that is turned twice and may take any time has more ways to end than a table should hold.</summary>
    private const int MostChoices = 4000;

    private readonly BenchClass _bench;
    private readonly CpModel _model;
    private readonly IReadOnlyList<LoadTimes> _loads;
    private readonly Dictionary<LoadTimes, IntVar[]> _count = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<LoadTimes, BoolVar[]> _in = new(ReferenceEqualityComparer.Instance);

    public OvenModel(CpModel model, BenchClass bench, IReadOnlyList<LoadTimes> loads)
    {
        (_model, _bench, _loads) = (model, bench, loads);
        foreach (var load in loads)
            Share(load);
        for (var oven = 0; oven < bench.Ovens.Count; oven++)
            LimitPlaces(oven);
        for (var later = 1; later < loads.Count; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
                KeepApart(loads[earlier], loads[later]);
        }
        BreakSymmetry();
    }

    /// <summary>The oven of each maker of a shift, counted from 1.</summary>
    public IReadOnlyList<int?> OvensOf(LoadTimes load, CpSolver solver) =>
        [.. _count[load].SelectMany((count, oven) => Enumerable.Repeat((int?)oven + 1, (int)solver.Value(count)))];

    /// <summary>True of each oven that a load uses, in order.</summary>
    public IReadOnlyList<BoolVar> UsedBy(LoadTimes load) => _in[load];

    public void Hint(LoadTimes load, IReadOnlyList<int> ovens)
    {
        for (var at = 0; at < _count[load].Length; at++)
        {
            _model.AddHint(_count[load][at], ovens.Count(oven => oven == at + 1));
            _model.AddHint(_in[load][at], ovens.Contains(at + 1));
        }
    }

    /// <summary>The loads of one shift may be shared out over several ovens.</summary>
    private void Share(LoadTimes load)
    {
        var all = load.Shift.Makers.Count;
        var most = Math.Min(all, _bench.Ovens.Places / Places(load));
        _count[load] = [.. Enumerable.Range(0, _bench.Ovens.Count).Select(oven => _model.NewIntVar(0, most, $"{load} in oven {oven}"))];
        _in[load] = [.. Enumerable.Range(0, _bench.Ovens.Count).Select(oven => _model.NewBoolVar($"{load} uses oven {oven}"))];
        _model.Add(LinearExpr.Sum(_count[load]) == all);
        foreach (var (count, used) in _count[load].Zip(_in[load]))
        {
            _model.Add(count >= 1).OnlyEnforceIf(used);
            _model.Add(count == 0).OnlyEnforceIf(used.Not());
        }
    }

    private void LimitPlaces(int oven)
    {
        var all = _model.AddCumulative(_bench.Ovens.Places);
        foreach (var load in _loads)
            all.AddDemand(load.Baking(_model, _in[load][oven]), _count[load][oven] * Places(load));
    }

    /// <summary>Two bakes in one oven follow each other with time to change the heat, unless they can share it.</summary>
    private void KeepApart(LoadTimes one, LoadTimes other)
    {
        var together = one.At == other.At && one.Bread.BakesTogether;
        if (!together && !one.Bread.BakesTogether && !other.Bread.BakesTogether && Heat(one) == Heat(other))
            return;
        List<ILiteral> ways = [Follows(one, other), Follows(other, one)];
        if (together)
            ways.Add(Together(one, other));
        for (var oven = 0; oven < _bench.Ovens.Count; oven++)
            _model.AddBoolOr([.. ways, _in[one][oven].Not(), _in[other][oven].Not()]);
    }

    private BoolVar Follows(LoadTimes first, LoadTimes second)
    {
        var follows = _model.NewBoolVar($"{first} before {second}");
        var (from, to) = (first.Bread.Bake!.Value.Last, second.Bread.Bake!.Value.First);
        _model.Add(second.Starts[to] >= first.Ends[from] + Change(first, Dial(second, to))).OnlyEnforceIf(follows);
        return follows;
    }

    /// <summary>Minutes to change the heat after a bake. One that ends soon after the dial was turned leaves the oven somewhere between.</summary>
    private LinearExpr Change(LoadTimes left, Temperature to)
    {
        var (first, last) = left.Bread.Bake!.Value;
        int[] turned = [.. Enumerable.Range(first + 1, last - first)];
        (int Least, int Most)[] ranges = [.. turned.Select(left.MinutesRange)];
        var isMany = ranges.Aggregate(1L, (ways, range) => ways * (range.Most - range.Least + 1)) > MostChoices;
        // The heat that is left lies between what the shortest and the longest stages leave, so that of too many ways the ends are enough for a change that is safe, if not always the least.
        var choices = ranges.Select(range => isMany ? [range.Least, range.Most] : Enumerable.Range(range.Least, range.Most - range.Least + 1))
            .Aggregate((IEnumerable<int[]>)[[]], (all, minutes) => all.SelectMany(begun => minutes.Select(each => (int[])[.. begun, each])))
            .Select(minutes => (Minutes: minutes, Change: _bench.Ovens.ChangeMinutes(HeatLeft(left, first, minutes), to))).ToList();
        if (isMany || choices.Select(choice => choice.Change).Distinct().Count() == 1)
            return LinearExpr.Constant(choices.Max(choice => choice.Change));
        var change = _model.NewIntVar(0, choices.Max(choice => choice.Change), $"change after {left}");
        var table = _model.AddAllowedAssignments([.. turned.Select(step => left.Minutes(_model, step)), change]);
        foreach (var choice in choices)
            table.AddTuple([.. choice.Minutes, choice.Change]);
        return change;
    }

    private Temperature HeatLeft(LoadTimes left, int first, int[] minutes) =>
        _bench.Ovens.HeatAfter([(Dial(left, first), 0), .. minutes.Select((each, at) => (Dial(left, first + 1 + at), each))]);

    private static Temperature Dial(LoadTimes load, int step) => load.Bread.Steps[step].Oven!.Temperature;

    private BoolVar Together(LoadTimes one, LoadTimes other)
    {
        var together = _model.NewBoolVar($"{one} with {other}");
        var (first, last) = one.Bread.Bake!.Value;
        for (var at = first; at <= last; at++)
        {
            _model.Add(one.Starts[at] == other.Starts[at]).OnlyEnforceIf(together);
            _model.Add(one.Ends[at] == other.Ends[at]).OnlyEnforceIf(together);
        }
        return together;
    }

    /// <summary>Ovens are alike: the first takes the most of the first load, and so on down.</summary>
    private void BreakSymmetry()
    {
        for (var oven = 1; oven < _bench.Ovens.Count; oven++)
            _model.Add(_count[_loads[0]][oven] <= _count[_loads[0]][oven - 1]);
    }

    private static int Places(LoadTimes load)
    {
        var (first, last) = load.Bread.Bake!.Value;
        return Enumerable.Range(first, last - first + 1).Max(step => load.Bread.Steps[step].Oven!.Places);
    }

    private static double Heat(LoadTimes load) => load.Bread.Steps[load.Bread.Bake!.Value.First].Oven!.Temperature.Celsius;
}
