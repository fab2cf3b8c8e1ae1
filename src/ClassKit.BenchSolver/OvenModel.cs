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
    private readonly IReadOnlyList<LoadBake> _bakes;
    private readonly Dictionary<LoadBake, IntVar[]> _count = [];
    private readonly Dictionary<LoadBake, BoolVar[]> _in = [];

    public OvenModel(CpModel model, BenchClass bench, IReadOnlyList<LoadTimes> loads)
    {
        (_model, _bench) = (model, bench);
        _bakes = [.. loads.SelectMany(load => load.Bread.Bakes.Select(bake => new LoadBake(load, bake)))];
        foreach (var bake in _bakes)
            Share(bake);
        for (var oven = 0; oven < bench.Ovens.Count; oven++)
            LimitPlaces(oven);
        for (var later = 1; later < _bakes.Count; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
                KeepApart(_bakes[earlier], _bakes[later]);
        }
        BreakSymmetry();
    }

    /// <summary>The oven of each maker of a shift, counted from 1.</summary>
    public IReadOnlyList<int?> OvensOf(LoadTimes load, BakeSteps bake, CpSolver solver) =>
        [.. _count[new(load, bake)].SelectMany((count, oven) => Enumerable.Repeat((int?)oven + 1, (int)solver.Value(count)))];

    /// <summary>True of each oven that a load uses, in order.</summary>
    public IReadOnlyList<BoolVar> UsedBy(LoadTimes load, BakeSteps bake) => _in[new(load, bake)];

    public void Hint(LoadTimes load, BakeSteps bake, IReadOnlyList<int> ovens)
    {
        var (count, used) = (_count[new(load, bake)], _in[new(load, bake)]);
        for (var at = 0; at < count.Length; at++)
        {
            _model.AddHint(count[at], ovens.Count(oven => oven == at + 1));
            _model.AddHint(used[at], ovens.Contains(at + 1));
        }
    }

    /// <summary>The loads of one shift may be shared out over several ovens.</summary>
    private void Share(LoadBake bake)
    {
        var all = bake.Load.Shift.Makers.Count;
        var most = Math.Min(all, _bench.Ovens.Places / bake.Places);
        _count[bake] = [.. Enumerable.Range(0, _bench.Ovens.Count).Select(oven => _model.NewIntVar(0, most, $"{bake} in oven {oven}"))];
        _in[bake] = [.. Enumerable.Range(0, _bench.Ovens.Count).Select(oven => _model.NewBoolVar($"{bake} uses oven {oven}"))];
        _model.Add(LinearExpr.Sum(_count[bake]) == all);
        foreach (var (count, used) in _count[bake].Zip(_in[bake]))
        {
            _model.Add(count >= 1).OnlyEnforceIf(used);
            _model.Add(count == 0).OnlyEnforceIf(used.Not());
        }
    }

    private void LimitPlaces(int oven)
    {
        var all = _model.AddCumulative(_bench.Ovens.Places);
        foreach (var bake in _bakes)
            all.AddDemand(bake.Load.Baking(_model, bake.Steps, _in[bake][oven]), _count[bake][oven] * bake.Places);
    }

    /// <summary>Two bakes in one oven follow each other with time to change the heat, unless they can share it.</summary>
    private void KeepApart(LoadBake one, LoadBake other)
    {
        // A load is in an oven once at a time already.
        if (ReferenceEquals(one.Load, other.Load))
        {
            KeepInTurn(one, other);
            return;
        }
        var together = one.IsLike(other) && one.IsTogether;
        if (!together && !one.IsTogether && !other.IsTogether && one.Dial(one.Steps.First) == other.Dial(other.Steps.First))
            return;
        List<ILiteral> ways = [Follows(one, other), Follows(other, one)];
        if (together)
            ways.Add(Together(one, other));
        for (var oven = 0; oven < _bench.Ovens.Count; oven++)
            _model.AddBoolOr([.. ways, _in[one][oven].Not(), _in[other][oven].Not()]);
    }

    /// <summary>Where one load goes into the same oven twice, that has to have the second heat by then.</summary>
    private void KeepInTurn(LoadBake first, LoadBake second)
    {
        if (first.Dial(first.Steps.First) == second.Dial(second.Steps.First) && !first.IsTogether && !second.IsTogether)
            return;
        var follows = Follows(first, second);
        for (var oven = 0; oven < _bench.Ovens.Count; oven++)
            _model.AddBoolOr([follows, _in[first][oven].Not(), _in[second][oven].Not()]);
    }

    private BoolVar Follows(LoadBake first, LoadBake second)
    {
        var follows = _model.NewBoolVar($"{first} before {second}");
        _model
            .Add(
                second.Load.Starts[second.Steps.First] >= first.Load.Ends[first.Steps.Last] + Change(first, second.Dial(second.Steps.First))
            )
            .OnlyEnforceIf(follows);
        return follows;
    }

    /// <summary>
    /// Minutes to change the heat after a bake. One that ends soon after the dial was turned leaves the oven somewhere between.
    /// </summary>
    private LinearExpr Change(LoadBake bake, Temperature to)
    {
        var (left, (first, last)) = bake;
        int[] turned = [.. Enumerable.Range(first + 1, last - first)];
        (int Least, int Most)[] ranges = [.. turned.Select(left.MinutesRange)];
        var isMany = ranges.Aggregate(1L, (ways, range) => ways * (range.Most - range.Least + 1)) > MostChoices;
        // The heat that is left lies between what the shortest and the longest stages leave, so that of too many ways the ends are enough
        // for a change that is safe, if not always the least.
        var choices = ranges
            .Select(range => isMany ? [range.Least, range.Most] : Enumerable.Range(range.Least, range.Most - range.Least + 1))
            .Aggregate(
                (IEnumerable<int[]>)
                    [
                        [],
                    ],
                (all, minutes) => all.SelectMany(begun => minutes.Select(each => (int[])[.. begun, each]))
            )
            .Select(minutes => (Minutes: minutes, Change: _bench.Ovens.ChangeMinutes(HeatLeft(bake, minutes), to)))
            .ToList();
        if (isMany || choices.Select(choice => choice.Change).Distinct().Count() == 1)
            return LinearExpr.Constant(choices.Max(choice => choice.Change));
        var change = _model.NewIntVar(0, choices.Max(choice => choice.Change), $"change after {bake}");
        var table = _model.AddAllowedAssignments([.. turned.Select(step => left.Minutes(_model, step)), change]);
        foreach (var choice in choices)
            table.AddTuple([.. choice.Minutes, choice.Change]);
        return change;
    }

    private Temperature HeatLeft(LoadBake left, int[] minutes) =>
        _bench.Ovens.HeatAfter([
            (left.Dial(left.Steps.First), 0),
            .. minutes.Select((each, at) => (left.Dial(left.Steps.First + 1 + at), each)),
        ]);

    private BoolVar Together(LoadBake one, LoadBake other)
    {
        var together = _model.NewBoolVar($"{one} with {other}");
        for (var at = one.Steps.First; at <= one.Steps.Last; at++)
        {
            _model.Add(one.Load.Starts[at] == other.Load.Starts[at]).OnlyEnforceIf(together);
            _model.Add(one.Load.Ends[at] == other.Load.Ends[at]).OnlyEnforceIf(together);
        }
        return together;
    }

    /// <summary>Ovens are alike: the first takes the most of the first load, and so on down.</summary>
    private void BreakSymmetry()
    {
        for (var oven = 1; oven < _bench.Ovens.Count; oven++)
            _model.Add(_count[_bakes[0]][oven] <= _count[_bakes[0]][oven - 1]);
    }
}
