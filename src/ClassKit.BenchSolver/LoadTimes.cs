using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using Google.OrTools.Sat;

namespace ClassKit.BenchSolver;

/// <summary>When one shift makes one bread.</summary>
internal sealed class LoadTimes
{
    private readonly LinearExpr[] _minutes;
    private readonly int _from;
    private readonly int _until;
    private readonly bool _open;
    private readonly Dictionary<BakeSteps, IntVar> _baking = [];

    /// <param name="model">Where the variables go.</param>
    /// <param name="shift">Who makes it, all in the same minute.</param>
    /// <param name="at">Which bread.</param>
    /// <param name="bread">Its method.</param>
    /// <param name="from">No step begins before.</param>
    /// <param name="until">No step ends after.</param>
    /// <param name="open">True if its doughs may take any time.</param>
    public LoadTimes(CpModel model, Shift shift, int at, BenchBread bread, int from, int until, bool open)
    {
        (Shift, At, Bread, _from, _until, _open) = (shift, at, bread, from, until, open);
        Starts = [.. bread.Steps.Select((_, step) => model.NewIntVar(from, until, $"{this} start {step}"))];
        Ends = [.. bread.Steps.Select((_, step) => model.NewIntVar(from, until, $"{this} end {step}"))];
        _minutes = [.. bread.Steps.Select((_, n) => Minutes(model, n, $"{this} minutes {n}"))];
        Intervals =
        [
            .. bread.Steps.Select((_, step) => model.NewIntervalVar(Starts[step], _minutes[step], Ends[step], $"{this} step {step}")),
        ];
    }

    public Shift Shift { get; }

    public int At { get; }

    public BenchBread Bread { get; }

    public IReadOnlyList<IntVar> Starts { get; }

    public IReadOnlyList<IntVar> Ends { get; }

    public IReadOnlyList<IntervalVar> Intervals { get; }

    public override string ToString() => $"{Bread.Id} of {Shift.Makers[0]}";

    public void KeepOrder(CpModel model, IntVar tasting, bool open, int heatUp, Func<IReadOnlyList<EquipmentCount>, int> hotFrom)
    {
        for (var at = 0; at < Starts.Count; at++)
        {
            if (hotFrom(Bread.Steps[at].Uses) is > 0 and var hot)
                model.Add(Starts[at] >= hot);
        }
        for (var at = 0; at + 1 < Starts.Count; at++)
        {
            var step = Bread.Steps[at];
            if (Bread.StaysInOven(at))
            {
                model.Add(Starts[at + 1] == Ends[at]);
                continue;
            }
            model.Add(Starts[at + 1] >= Ends[at] + step.Wait.MinMinutes);
            if (!open)
                model.Add(Starts[at + 1] <= Ends[at] + step.Wait.MaxMinutes);
        }
        model.Add(Ends[^1] <= tasting);
        if (!open && Bread.KeepsMinutes is { } keeps)
            model.Add(tasting <= Ends[^1] + keeps);
        if (Bread.Bake is var (first, _))
            model.Add(Starts[first] >= heatUp);
        for (var at = 0; at < Starts.Count; at++)
        {
            if (!open && Bread.Steps[at].BakedWithinMinutes is { } within)
                model.Add(Ends[Bread.Bake is var (_, last) ? last : Starts.Count - 1] <= Starts[at] + within);
            if (!open && Bread.Steps[at].ServedWithinMinutes is { } served)
                model.Add(tasting <= Starts[at] + served);
        }
    }

    /// <summary>How long one step takes.</summary>
    public LinearExpr Length(int at) => _minutes[at];

    /// <summary>How long one step takes, as a variable.</summary>
    public IntVar Minutes(CpModel model, int at) => _minutes[at] as IntVar ?? model.NewConstant(Bread.Steps[at].MaxMinutes);

    /// <summary>How long one step can take.</summary>
    public (int Least, int Most) MinutesRange(int at) =>
        (
            Bread.Steps[at].MinMinutes,
            _open && !Bread.Steps[at].IsHandsOn ? Math.Max(_until, Bread.Steps[at].MaxMinutes) : Bread.Steps[at].MaxMinutes
        );

    /// <summary>From the beginning of a step until what it occupies is free again.</summary>
    public IntervalVar Occupied(CpModel model, int at) =>
        Bread.Steps[at].IsHandsOn || at + 1 == Starts.Count
            ? Intervals[at]
            : model.NewIntervalVar(
                Starts[at],
                model.NewIntVar(0, _until - _from, $"{this} place {at}"),
                Starts[at + 1],
                $"{this} place {at}"
            );

    /// <summary>From the minute the loads go into an oven until they come out, if any is in it.</summary>
    public IntervalVar Baking(CpModel model, BakeSteps bake, BoolVar inOven)
    {
        var (first, last) = bake;
        // The solver wants an interval's length as one variable.
        if (bake.Count > 1 && !_baking.ContainsKey(bake))
            _baking[bake] = model.NewIntVar(0, _until - _from, $"{this} baking {first}");
        return model.NewOptionalIntervalVar(
            Starts[first],
            bake.Count > 1 ? _baking[bake] : _minutes[first],
            Ends[last],
            inOven,
            $"{this} bakes {first}"
        );
    }

    /// <summary>Drawbacks, each a variable that cannot fall below none: that gives the solver a bound to begin with.</summary>
    public IEnumerable<LinearExpr> Cost(CpModel model, IntVar tasting, PlanWeights weights)
    {
        if (!Bread.IsForShow)
            yield return weights.Standing * Shift.Makers.Count * Difference(tasting, Ends[^1], 0, "standing");
        for (var at = 0; at < Starts.Count; at++)
        {
            var step = Bread.Steps[at];
            if (at + 1 < Starts.Count && step.Wait.MinMinutes < step.Wait.MaxMinutes && !Bread.StaysInOven(at))
                yield return weights.Waiting
                    * Shift.Makers.Count
                    * Difference(Starts[at + 1], Ends[at], step.Wait.MinMinutes, $"wait {at}");
            if (step.IsHandsOn && step.MinMinutes < step.MaxMinutes)
                yield return weights.Hurry * Shift.Makers.Count * (step.MaxMinutes - _minutes[at]);
        }

        IntVar Difference(IntVar later, IntVar earlier, int least, string name)
        {
            var beyond = model.NewIntVar(0, _until - _from, $"{this} {name}");
            model.Add(later == earlier + least + beyond);
            return beyond;
        }
    }

    /// <summary>The steps of every maker of the shift.</summary>
    public IEnumerable<PlannedStep> Read(CpSolver solver, OvenModel? ovens)
    {
        (BakeSteps Bake, IReadOnlyList<int?> Ovens)[] places =
        [
            .. ovens is null ? [] : Bread.Bakes.Select(bake => (bake, ovens.OvensOf(this, bake, solver))),
        ];
        for (var who = 0; who < Shift.Makers.Count; who++)
        {
            for (var at = 0; at < Starts.Count; at++)
            {
                var oven = places.Where(place => place.Bake.Holds(at)).Select(place => place.Ovens[who]).FirstOrDefault();
                yield return new(new(Shift.Makers[who], At), at, (int)solver.Value(Starts[at]), (int)solver.Value(Ends[at]), oven);
            }
        }
    }

    /// <summary>Hands do not get slower because a dough may stand, so only what nobody stands by is opened.</summary>
    private LinearExpr Minutes(CpModel model, int at, string name)
    {
        var (least, most) = MinutesRange(at);
        return least == most ? LinearExpr.Constant(most) : model.NewIntVar(least, most, name);
    }
}
