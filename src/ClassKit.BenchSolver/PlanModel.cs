using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Solving;
using Google.OrTools.Sat;

namespace ClassKit.BenchSolver;

/// <summary>A question in the solver's terms.</summary>
internal sealed class PlanModel
{
    private readonly BenchClass _bench;
    private readonly SolverQuestion _question;
    private readonly PlanTimes _times;
    private readonly IReadOnlyList<IntervalVar> _watched;
    private readonly OvenModel? _ovens;

    public PlanModel(SolverQuestion question)
    {
        (_question, _bench) = (question, question.Class);
        _times = new PlanTimes(Constraints, question);
        _watched =
        [
            .. _times.Demonstrations.Select(
                (start, at) => Constraints.NewFixedSizeIntervalVar(start, _bench.Demonstrations[at].Minutes, $"shown {at}")
            ),
        ];
        LimitPeople();
        LeaveOvensAlone();
        foreach (var count in _bench.Equipment.Where(count => !question.Without.Contains(new(RuleKind.Equipment, Equipment: count.Kind))))
            LimitEquipment(count);
        if (!Drops(RuleKind.Ovens) && _times.Loads.Any(load => load.Bread.Bake is not null))
            _ovens = new OvenModel(Constraints, _bench, [.. _times.Loads.Where(load => load.Bread.Bake is not null)]);
        if (question.Goal == PlanGoal.Best)
            Constraints.Minimize(
                _times.Cost(question.Weights) + question.Weights.Unlike * new SeriesModel(Constraints, _bench, _times, _ovens).Unlike()
            );
        else if (question.Goal == PlanGoal.Shortest)
            Constraints.Minimize(_times.Tasting);
        if (question.Hint is { } hint)
            PlanHint.Give(Constraints, hint, _times, _ovens);
    }

    public CpModel Constraints { get; } = new();

    /// <summary>The plan found; null if a rule was left out, for then it is none.</summary>
    public BenchPlan? Read(CpSolver solver)
    {
        if (_question.Without.Count > 0)
            return null;
        var planned = _times.Loads.SelectMany(load => load.Read(solver, _ovens)).ToLookup(step => step.Load);
        var shown = _bench.Demonstrations.Zip(_times.Demonstrations, (demonstration, start) =>
            new PlannedDemonstration(demonstration, (int)solver.Value(start))
        );
        var time = _bench.Time with
        {
            PeriodMinutes = (int)solver.Value(_times.Tasting) + _bench.Time.TastingMinutes + _bench.Time.CleanupMinutes,
        };
        return new(_bench with { Time = time }, _times.Shifts, [.. _bench.Loads.SelectMany(load => planned[load])], [.. shown]);
    }

    private bool Drops(RuleKind kind) => _question.Without.Contains(new(kind));

    /// <summary>Hands at work, and eyes on the instructor. Of teams that do the same in the same minute one stands for all.</summary>
    private void LimitPeople()
    {
        foreach (
            var (maker, loads) in _times
                .Loads.SelectMany(load => load.Shift.Makers)
                .Append(Maker.Instructor)
                .Distinct()
                .Select(maker => (Maker: maker, Loads: _times.Loads.Where(load => load.Shift.Makers.Contains(maker)).ToArray()))
                .DistinctBy(each => (each.Maker.IsInstructor, string.Join(' ', each.Loads.Select(load => load.ToString()))))
        )
        {
            var there = maker.IsInstructor ? 1 : _bench.PeoplePerTeam;
            var works = loads
                .SelectMany(load =>
                    load.Bread.Steps.Select((step, at) => (Interval: load.Intervals[at], People: Math.Min(step.People, there)))
                )
                .Where(work => work.People > 0)
                .ToArray();
            // However many hands there are, none of them works while something is shown.
            var capacity = Drops(RuleKind.People) ? there + works.Sum(work => work.People) : there;
            var all = Constraints.AddCumulative(capacity);
            foreach (var (interval, people) in works.Concat(_watched.Select(interval => (interval, capacity))))
                all.AddDemand(interval, people);
        }
    }

    /// <summary>Nobody puts in, takes out or turns a dial amid a demonstration: all watch, and the instructor shows.</summary>
    private void LeaveOvensAlone()
    {
        foreach (var load in _times.Loads)
        {
            IntVar[] moments =
            [
                .. load.Bread.Bakes.SelectMany(bake => load.Starts.Skip(bake.First).Take(bake.Count).Append(load.Ends[bake.Last])),
                .. Enumerable
                    .Range(0, load.Starts.Count)
                    .Where(step => load.Bread.Steps[step].IsPutIn)
                    .SelectMany(step => new[] { load.Starts[step], load.Ends[step] }),
            ];
            for (var at = 0; at < _times.Demonstrations.Count; at++)
            {
                // Its own bread goes in as it begins, and stays in for longer than it takes.
                foreach (var moment in _bench.Demonstrations[at].Load == load.At ? [] : moments)
                {
                    var before = Constraints.NewBoolVar($"{moment.Name()} before demonstration {at}");
                    Constraints.Add(moment <= _times.Demonstrations[at]).OnlyEnforceIf(before);
                    Constraints.Add(moment >= _times.Demonstrations[at] + _bench.Demonstrations[at].Minutes).OnlyEnforceIf(before.Not());
                }
            }
        }
    }

    private void LimitEquipment(EquipmentCount count)
    {
        var all = Constraints.AddCumulative(count.Count);
        foreach (var load in _times.Loads)
        {
            for (var at = 0; at < load.Bread.Steps.Count; at++)
            {
                var taken = load.Bread.Steps[at].Uses.Where(use => use.Kind == count.Kind).Sum(use => use.Count);
                if (taken > 0)
                    all.AddDemand(load.Occupied(Constraints, at), taken * load.Shift.Makers.Count);
            }
        }
        foreach (var (watched, shown) in _watched.Zip(_bench.Demonstrations))
        {
            var taken = shown.Uses.Where(use => use.Kind == count.Kind).Sum(use => use.Count);
            if (taken > 0)
                all.AddDemand(watched, taken);
        }
    }
}
