using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.RuleOfThumb;

/// <summary>One attempt of the rule of thumb, from an empty class to a plan.</summary>
/// <param name="bench">The class.</param>
/// <param name="shifts">The teams that go together.</param>
/// <param name="minutes">How long each step is planned.</param>
/// <param name="series">Breads to plan together, so that they can be held against each other; each of them in one only.</param>
internal sealed class GreedyAttempt(
    BenchClass bench,
    IReadOnlyList<Shift> shifts,
    Func<BenchStep, int> minutes,
    IReadOnlyList<BenchSeries> series
)
{
    private readonly Ledger _ledger = new(bench);
    private readonly Dictionary<BenchLoad, IReadOnlyList<PlannedStep>> _planned = [];

    /// <summary>When each demonstration begins; those not yet placed are missing.</summary>
    private readonly Dictionary<int, int> _shown = [];

    /// <summary>A plan, or null if something finds no place.</summary>
    public BenchPlan? Plan(bool showFirst)
    {
        if ((showFirst && !ShowFirst()) || !PlanBreads() || !ShowTheRest())
            return null;
        if (showFirst)
            MoveCloser();
        return new(
            bench,
            shifts,
            [.. bench.Loads.SelectMany(load => _planned[load])],
            [.. bench.Demonstrations.Select((shown, at) => new PlannedDemonstration(shown, _shown[at]))]
        );
    }

    /// <summary>One after the other as work begins, but for those that need a bread or bake one.</summary>
    private bool ShowFirst()
    {
        var start = bench.Time.WorkFrom;
        for (var at = 0; at < bench.Demonstrations.Count; at++)
        {
            if (bench.Demonstrations[at] is { After: null, Load: null } && !IsBehind(at) && !Show(at, start))
                return false;
            start = _shown.TryGetValue(at, out var began) ? began + bench.Demonstrations[at].Minutes : start;
        }
        return true;
    }

    /// <summary>True of what waits until a bread is out of the fat.</summary>
    private bool IsBehind(int shown) => Behind.Any(order => order.Demonstration == shown);

    private IEnumerable<ShownBehind> Behind => bench.ShownBehind.Where(order => order.MayBe(bench));

    private Demonstration Shown(ShownBehind order) => bench.Demonstrations[order.Demonstration];

    private bool PlanBreads()
    {
        foreach (var at in LongestFirst())
        {
            if (
                _planned.Keys.Any(load => load.Bread == at)
                || (series.FirstOrDefault(each => each.Members.Contains(at)) is { } together && PlaceTogether(together))
            )
                continue;
            // The last shift is planned first, and so ends last.
            Shift[] makers = [.. MakersOf(at).Reverse()];
            foreach (var (turn, shift) in makers.Index())
            {
                if (!PlaceLatest(at, shift, isFirst: turn == makers.Length - 1))
                    return false;
            }
        }
        return true;
    }

    /// <summary>
    /// What must be tasted soon first, since only the end has a place for it; then the longest bread, since it finds one least easily; but what waits for another to be cooked before that one, since breads
    /// are planned from the end.
    /// </summary>
    private IEnumerable<int> LongestFirst()
    {
        var left = Enumerable
            .Range(0, bench.Breads.Count)
            .Where(at => !bench.Breads[at].IsForShow)
            .OrderBy(at => bench.Breads[at].Steps.Min(step => step.ServedWithinMinutes) ?? int.MaxValue)
            .ThenByDescending(at => bench.Breads[at].ShortestMinutes)
            .ToList();
        while (left.Count > 0)
        {
            var next = left.FindIndex(at =>
                !bench.CookedFirst.Any(order => order.Bread == at && left.Contains(order.Before))
                && !Behind.Any(order =>
                    order.Bread == at && Shown(order).Before is { } then && then.Bread != at && left.Contains(then.Bread)
                )
            );
            yield return left[Math.Max(next, 0)];
            left.RemoveAt(Math.Max(next, 0));
        }
    }

    private bool IsInOrder(IReadOnlyList<PlannedStep[]> chains)
    {
        if (bench.CookedFirst.Count + bench.ShownBehind.Count == 0)
            return true;
        PlannedStep[] planned = [.. _planned.Values.SelectMany(steps => steps), .. chains.SelectMany(chain => chain)];
        return bench.CookedFirst.All(order => CookedInOrder.Keeps(bench, order, planned))
            && Behind.All(order => LeavesTime(order, planned));
    }

    /// <summary>
    /// True if there is time for what is shown between the last of a bread that comes first and the bread of which something must be seen:
    /// before all of that one, since it is planned without a pause to watch in.
    /// </summary>
    private bool LeavesTime(ShownBehind order, PlannedStep[] planned)
    {
        if (Shown(order) is not { Before: { } before } shown)
            return true;
        var seen = planned.Where(step => step.Step == 0 && bench.StepLike(step.Load.Bread, before) is not null).ToArray();
        return planned
            .Where(step => step.Load.Bread == order.Bread && step.Step == order.LastStep(bench))
            .All(step => seen.All(then => step.End + shown.Minutes <= then.Start));
    }

    private IEnumerable<Shift> MakersOf(int bread) =>
        (bench.Breads[bread].LeftToInstructor ? [new([Maker.Instructor])] : shifts)
            .Select(shift => shift.Making(bench.Breads[bread]))
            .OfType<Shift>();

    /// <summary>
    /// All of a series without a pause, begun so that all go into the oven in one minute, into one oven if it holds them; false where that
    /// cannot be had.
    /// </summary>
    private bool PlaceTogether(BenchSeries one)
    {
        if (one.Members.Any(member => Pauses(member).Count > 0 || _planned.Keys.Any(load => load.Bread == member)))
            return false;
        var moments = one.Together(bench);
        PlannedStep[][] chains =
        [
            .. moments.SelectMany(moment => MakersOf(moment.Bread).SelectMany(shift => shift.Makers).Select(maker => From(moment, maker))),
        ];
        var (earliest, latest) = (chains.Max(chain => Earliest(chain)), chains.Min(chain => bench.Time.ReadyBy - chain[^1].End));
        return Enumerable.Range(1, bench.Ovens.Count).Select(oven => (int?)oven).Append(null).Any(oven => TakenTogether(oven));

        bool TakenTogether(int? oven)
        {
            for (var at = latest; at >= earliest; at--)
            {
                PlannedStep[][] moved = [.. chains.Select(chain => Moved(chain, at))];
                if (moved.All(chain => IsSeen(chain[0].Load.Bread, chain)) && IsInOrder(moved) && _ledger.TakeAll(moved, oven) is { } taken)
                {
                    foreach (var steps in taken)
                        _planned[steps[0].Load] = steps;
                    return true;
                }
            }
            return false;
        }
    }

    /// <summary>A load with its moment in minute 0, so that what comes before it begins before that.</summary>
    private PlannedStep[] From(StepOfBread moment, Maker maker)
    {
        var chain = Chain(bench.Breads[moment.Bread], new(maker, moment.Bread), 0, []);
        return Moved(chain, -chain[moment.Step].Start);
    }

    /// <summary>The oven of what a bread is held against, as far as that is planned; null if there is none.</summary>
    private int? SiblingsOven(int bread)
    {
        var siblings = BenchSeries.Of(bench).FirstOrDefault(each => each.Members.Contains(bread))?.Members ?? [];
        return _planned
            .Where(load => siblings.Contains(load.Key.Bread))
            .SelectMany(load => load.Value)
            .Select(step => step.Oven)
            .FirstOrDefault(oven => oven is not null);
    }

    private int Earliest(PlannedStep[] chain) =>
        Math.Max(
            bench.Time.WorkFrom - chain[0].Start,
            bench.Breads[chain[0].Load.Bread].KeepsMinutes is { } keeps ? bench.Time.ReadyBy - keeps - chain[^1].End : int.MinValue
        );

    private static PlannedStep[] Moved(PlannedStep[] chain, int by) =>
        [.. chain.Select(step => step with { Start = step.Start + by, End = step.End + by })];

    /// <summary>
    /// The whole bread without a pause, but for what is shown in the middle of it, ending as late as everything else allows.
    /// </summary>
    private bool PlaceLatest(int at, Shift shift, bool isFirst)
    {
        var bread = bench.Breads[at];
        var pauses = isFirst ? Pauses(at) : [];
        var length = Chain(bread, new(shift.Makers[0], at), 0, pauses)[^1].End;
        var earliest = Math.Max(bench.Time.WorkFrom, bread.KeepsMinutes is { } keeps ? bench.Time.ReadyBy - keeps - length : 0);
        var siblings = SiblingsOven(at);
        for (var start = bench.Time.ReadyBy - length; start >= earliest; start--)
        {
            PlannedStep[][] chains = [.. shift.Makers.Select(maker => Chain(bread, new(maker, at), start, pauses))];
            if (
                !IsSeen(at, chains[0])
                || !IsInOrder(chains)
                || !pauses.All(pause => IsInTime(bench.Demonstrations[pause.Value], chains[0][pause.Key].End))
                || ((siblings is null ? null : _ledger.TakeAll(chains, siblings)) ?? _ledger.TakeAll(chains)) is not { } taken
            )
                continue;
            foreach (var steps in taken)
                _planned[steps[0].Load] = steps;
            foreach (var (step, demonstration) in pauses)
                Show(demonstration, chains[0][step].End);
            return true;
        }
        return false;
    }

    /// <summary>True if all are free to watch, and nobody who is planned already has begun what is shown.</summary>
    private bool IsInTime(Demonstration shown, int start) =>
        _ledger.IsFreeFor(shown, start) && StepsLike(shown.Before!.Value).All(step => step.Start >= start + shown.Minutes);

    /// <summary>Demonstrations between two steps of one bread, by the step that they come after.</summary>
    private Dictionary<int, int> Pauses(int bread)
    {
        var pauses = new Dictionary<int, int>();
        for (var at = 0; at < bench.Demonstrations.Count; at++)
        {
            if (
                !IsBehind(at)
                && bench.Demonstrations[at] is { After: { } after, Before: { } before, Load: null } shown
                && after.Bread == bread
                && before == after with { Step = after.Step + 1 }
                && !bench.Breads[bread].StaysInOven(after.Step)
                && shown.Minutes <= bench.Breads[bread].Steps[after.Step].Wait.MaxMinutes
            )
                pauses.TryAdd(after.Step, at);
        }
        return pauses;
    }

    private PlannedStep[] Chain(BenchBread bread, BenchLoad load, int start, Dictionary<int, int> pauses)
    {
        var steps = new PlannedStep[bread.Steps.Count];
        for (var at = 0; at < steps.Length; at++)
        {
            steps[at] = new(load, at, start, start + minutes(bread.Steps[at]), null);
            var pause = pauses.TryGetValue(at, out var demonstration) ? bench.Demonstrations[demonstration].Minutes : 0;
            start = steps[at].End + Math.Max(bread.Steps[at].Wait.MinMinutes, pause);
        }
        return steps;
    }

    private bool IsSeen(int bread, PlannedStep[] chain) =>
        _shown.All(shown =>
            bench.Demonstrations[shown.Key] is not { Before: { } before } each
            || bench.StepLike(bread, before) is not { } like
            || shown.Value + each.Minutes <= chain[like].Start
        );

    /// <summary>Each thing that has no place yet, as late as all are free to watch before they need it.</summary>
    private bool ShowTheRest()
    {
        for (var at = 0; at < bench.Demonstrations.Count; at++)
        {
            if (_shown.ContainsKey(at))
                continue;
            var start = Latest(at);
            while (start >= Earliest(at) && !Show(at, start))
                start--;
            if (start < Earliest(at))
                return false;
        }
        return true;
    }

    /// <summary>Takes what a demonstration needs, its own load with it; false if something is taken already.</summary>
    private bool Show(int at, int start)
    {
        var shown = bench.Demonstrations[at];
        if (!_ledger.IsFreeFor(shown, start))
            return false;
        if (shown.Load is { } load)
        {
            var chain = Chain(bench.Breads[load], new(Maker.Instructor, load), start, []);
            if (chain[^1].End > bench.Time.ReadyBy || _ledger.TakeAll([chain]) is not { } taken)
                return false;
            _planned[taken[0][0].Load] = taken[0];
        }
        _ledger.Watch(shown, start);
        _shown[at] = start;
        return true;
    }

    private int Earliest(int at) =>
        Math.Max(
            bench.Demonstrations[at].After is { } after
                ? Math.Max(bench.Time.WorkFrom, StepsOf(after).Min(step => step.End))
                : bench.Time.WorkFrom,
            Behind
                .Where(order => order.Demonstration == at)
                .SelectMany(order => StepsOf(new(order.Bread, order.LastStep(bench)!.Value)))
                .Select(step => step.End)
                .DefaultIfEmpty()
                .Max()
        );

    /// <summary>The last minute at which a demonstration can begin and be over in time.</summary>
    private int Latest(int at) =>
        bench.Demonstrations[at] is { Before: { } before } shown
            ? StepsLike(before).Min(step => step.Start) - shown.Minutes
            : bench.Time.ReadyBy - bench.Demonstrations[at].Minutes;

    private IEnumerable<PlannedStep> StepsOf(StepOfBread which) =>
        _planned.Where(load => load.Key.Bread == which.Bread).Select(load => load.Value[which.Step]);

    /// <summary>The same step in every bread of a series.</summary>
    private IEnumerable<PlannedStep> StepsLike(StepOfBread which) =>
        _planned
            .Select(load => (Steps: load.Value, Like: bench.StepLike(load.Key.Bread, which)))
            .Where(each => each.Like is not null)
            .Select(each => each.Steps[each.Like!.Value]);

    /// <summary>Moves each demonstration, the last first, as near to what it shows as the teams are free to watch.</summary>
    private void MoveCloser()
    {
        for (var at = bench.Demonstrations.Count - 1; at >= 0; at--)
        {
            if (bench.Demonstrations[at] is not { Before: not null, After: null, Load: null } shown || IsBehind(at))
                continue;
            var early = _shown[at];
            _ledger.Unwatch(shown, early);
            var start = Latest(at);
            while (start > early && !_ledger.IsFreeFor(shown, start))
                start--;
            _ledger.Watch(shown, start);
            _shown[at] = start;
        }
    }
}
