using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Solving;
using Google.OrTools.Sat;

namespace ClassKit.BenchSolver;

/// <summary>When everything happens: the solver's variables and the order of steps.</summary>
internal sealed class PlanTimes
{
    private readonly CpModel _model;
    private readonly BenchClass _bench;
    private readonly SolverQuestion _question;
    private readonly List<IntVar> _demonstrationWaits = [];

    public PlanTimes(CpModel model, SolverQuestion question)
    {
        (_model, _question, _bench) = (model, question, question.Class);
        var free = question.Goal == PlanGoal.Shortest || question.Without.Contains(new(RuleKind.Period));
        Horizon = free ? Roomy(_bench) : Math.Max(_bench.Time.ReadyBy, _bench.Time.WorkFrom);
        Tasting = model.NewIntVar(free ? _bench.Time.WorkFrom : _bench.Time.ReadyBy, free ? Horizon : _bench.Time.ReadyBy, "tasting");
        Shifts = Shift.Of(_bench.Teams, question.Shifts);
        Loads =
        [
            .. _bench.Breads.SelectMany(
                (bread, at) =>
                    (bread.LeftToInstructor ? [new([Maker.Instructor])] : Shifts)
                        .Select(shift => shift.Making(bread))
                        .OfType<Shift>()
                        .Select(shift => new LoadTimes(model, shift, at, bread, _bench.Time.WorkFrom, Horizon, IsOpen(at)))
            ),
        ];
        if (!question.Without.Contains(new(RuleKind.Demonstrations)))
            Demonstrations =
            [
                .. _bench.Demonstrations.Select((_, at) => model.NewIntVar(_bench.Time.WorkFrom, Horizon, $"demonstration {at}")),
            ];
        KeepOrder();
        BreakSymmetry();
    }

    public IReadOnlyList<Shift> Shifts { get; }

    public int Horizon { get; }

    public IntVar Tasting { get; }

    public IReadOnlyList<LoadTimes> Loads { get; }

    public IReadOnlyList<IntVar> Demonstrations { get; } = [];

    /// <summary>The same sum as <see cref="PlanCost.Weighed"/>.</summary>
    public LinearExpr Cost(PlanWeights weights) =>
        LinearExpr.Sum([
            .. Loads.SelectMany(load => load.Cost(_model, Tasting, weights)),
            .. _demonstrationWaits.Select(wait => weights.Waiting * wait),
        ]);

    private void KeepOrder()
    {
        var heatUp = _question.Without.Contains(new(RuleKind.Ovens)) ? 0 : _bench.Ovens.HeatUpMinutes;
        foreach (var load in Loads)
            load.KeepOrder(_model, Tasting, IsOpen(load.At), heatUp, HotFrom);
        foreach (var order in _bench.CookedFirst)
            KeepFirst(order);
        foreach (var order in _bench.ShownBehind.Where(order => Demonstrations.Count > 0 && order.MayBe(_bench)))
        {
            foreach (var load in Loads.Where(load => load.At == order.Bread))
                _model.Add(load.Ends[order.LastStep(_bench)!.Value] <= Demonstrations[order.Demonstration]);
        }
        for (var at = 0; at < Demonstrations.Count; at++)
        {
            var end = Demonstrations[at] + _bench.Demonstrations[at].Minutes;
            _model.Add(end <= Tasting);
            if (HotFrom(_bench.Demonstrations[at].Uses) is > 0 and var hot)
                _model.Add(Demonstrations[at] >= hot);
            if (_bench.Demonstrations[at].Load is { } own)
                _model.Add(Demonstrations[at] == Loads.First(load => load.At == own).Starts[0]);
            if (_bench.Demonstrations[at].After is { } after)
                KeepAfter(Demonstrations[at], [.. Loads.Where(load => load.At == after.Bread).Select(load => load.Ends[after.Step])], at);
            if (_bench.Demonstrations[at].Before is not { } before)
                continue;
            // The wait is over when the first shift does what was shown.
            var shown = Loads
                .Select(load => (Load: load, Like: _bench.StepLike(load.At, before)))
                .Where(each => each.Like is not null)
                .Select(each => each.Load.Starts[each.Like!.Value])
                .ToArray();
            var wait = _model.NewIntVar(0, Horizon, $"wait after demonstration {at}");
            _model.AddMinEquality(end + wait, shown);
            _demonstrationWaits.Add(wait);
        }
    }

    private void KeepFirst(CookedFirst order)
    {
        if (order.LastStep(_bench) is not { } last || order.FirstStep(_bench) is not { } first)
            return;
        foreach (var load in Loads.Where(load => load.At == order.Bread))
        {
            foreach (
                var then in Loads.Where(then =>
                    then.At == order.Before && (!order.EachForItself || then.Shift.Makers.Intersect(load.Shift.Makers).Any())
                )
            )
                _model.Add(load.Ends[last] <= then.Starts[first]);
        }
    }

    /// <summary>What the first shift has finished can be shown.</summary>
    private void KeepAfter(IntVar shown, IntVar[] ends, int at)
    {
        if (ends.Length == 1)
        {
            _model.Add(shown >= ends[0]);
            return;
        }
        var first = _model.NewIntVar(0, Horizon, $"ready for demonstration {at}");
        _model.AddMinEquality(first, ends);
        _model.Add(shown >= first);
    }

    /// <summary>
    /// Shifts of one size are alike: they are numbered in the order in which they begin the longest bread. Where teams share a series out,
    /// no two shifts are alike.
    /// </summary>
    private void BreakSymmetry()
    {
        if (_bench.Breads.Any(bread => bread.Teams is not null))
            return;
        var starts = Loads
            .Where(load => !load.Shift.IsInstructor)
            .GroupBy(load => load.At)
            .MaxBy(loads => loads.First().Bread.ShortestMinutes)
            ?.ToArray()
            ?? [];
        foreach (
            var (earlier, later) in starts
                .Zip(starts.Skip(1))
                .Where(pair => pair.First.Shift.Makers.Count == pair.Second.Shift.Makers.Count)
        )
            _model.Add(earlier.Starts[0] <= later.Starts[0]);
    }

    /// <summary>As far as the equipment that heats is among the rules that are kept.</summary>
    private int HotFrom(IReadOnlyList<EquipmentCount> uses) =>
        _bench.HotFrom([.. uses.Where(use => !_question.Without.Contains(new(RuleKind.Equipment, Equipment: use.Kind)))]);

    private bool IsOpen(int bread) => _question.Without.Contains(new(RuleKind.Windows, bread));

    /// <summary>Long enough to make every load after the other, with the hottest oven cooling to the coolest in between.</summary>
    private static int Roomy(BenchClass bench)
    {
        var settings = bench
            .Breads.SelectMany(bread => bread.Steps)
            .Select(step => step.Oven)
            .OfType<OvenSetting>()
            .Select(oven => oven.Temperature)
            .ToArray();
        var change = settings.SelectMany(from => settings.Select(to => bench.Ovens.ChangeMinutes(from, to))).DefaultIfEmpty(0).Max();
        return Math.Max(bench.Time.ReadyBy, bench.Time.WorkFrom)
            + bench.Ovens.HeatUpMinutes
            + bench.Demonstrations.Sum(each => each.Minutes)
            + bench.Equipment.Select(count => count.HeatUpMinutes).DefaultIfEmpty().Max()
            + bench.Loads.Sum(load => bench.Breads[load.Bread].Steps.Sum(step => step.MaxMinutes + step.Wait.MinMinutes) + change);
    }
}
