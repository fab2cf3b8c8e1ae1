using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.RuleOfThumb;

/// <summary>What is taken, minute by minute, while a plan is put together load by load.</summary>
internal sealed class Ledger
{
    private readonly BenchClass _bench;
    private readonly int[][] _people;
    private readonly Dictionary<EquipmentKind, int[]> _equipment;
    private readonly List<OvenUse>[] _ovens;
    private readonly List<(int Start, int End)> _watched = [];

    /// <summary>When something goes into a steamer or the like, or comes out.</summary>
    private readonly List<int> _putIn = [];

    public Ledger(BenchClass bench)
    {
        var minutes = Math.Max(bench.Time.PeriodMinutes, 1);
        _bench = bench;
        _people = [.. Enumerable.Range(0, bench.Teams + 1).Select(_ => new int[minutes])];
        _equipment = bench.Equipment.ToDictionary(count => count.Kind, _ => new int[minutes]);
        _ovens = [.. Enumerable.Range(0, bench.Ovens.Count).Select(_ => new List<OvenUse>())];
    }

    public void Watch(Demonstration shown, int start) => Everybody(shown, start, 1);

    public void Unwatch(Demonstration shown, int start) => Everybody(shown, start, -1);

    /// <summary>True if nobody works from a minute on while something is shown, and what it occupies is free.</summary>
    public bool IsFreeFor(Demonstration shown, int start) =>
        start >= _bench.Time.WorkFrom
        && start >= _bench.HotFrom(shown.Uses)
        && start + shown.Minutes <= _bench.Time.ReadyBy
        && Range(start, start + shown.Minutes).All(minute => _people.All(person => person[minute] == 0) && IsFree(shown.Uses, minute))
        && !_putIn.Exists(minute => start < minute && minute < start + shown.Minutes)
        && _ovens.All(uses => uses.TrueForAll(use => !IsAttended(use, start, start + shown.Minutes)));

    /// <summary>
    /// Takes what several loads need, and gives them their ovens; or takes nothing and returns null if they do not all fit.
    /// </summary>
    /// <param name="loads">The steps of each.</param>
    /// <param name="only">The oven that all go into, counted from 1; null for the first that has room for each.</param>
    public IReadOnlyList<IReadOnlyList<PlannedStep>>? TakeAll(IReadOnlyList<IReadOnlyList<PlannedStep>> loads, int? only = null)
    {
        var taken = new List<IReadOnlyList<PlannedStep>>();
        foreach (var load in loads)
        {
            if (Fit(load, only) is { } fitting)
            {
                Book(fitting, 1);
                taken.Add(fitting);
                continue;
            }
            taken.Reverse();
            taken.ForEach(steps => Book(steps, -1));
            return null;
        }
        return taken;
    }

    /// <summary>The steps with their oven, or null if something they need is taken.</summary>
    private PlannedStep[]? Fit(IReadOnlyList<PlannedStep> steps, int? only)
    {
        var load = steps[0].Load;
        var bread = _bench.Breads[load.Bread];
        var capacity = load.Maker.IsInstructor ? 1 : _bench.PeoplePerTeam;
        for (var at = 0; at < steps.Count; at++)
        {
            var step = bread.Steps[at];
            var people = Math.Min(step.People, capacity);
            if (Range(steps[at].Start, steps[at].End).Any(minute => people > 0 && _people[load.Maker.Team][minute] + people > capacity))
                return null;
            if (steps[at].Start < _bench.HotFrom(step.Uses))
                return null;
            if (step.IsPutIn && _watched.Exists(watched => IsAmid(steps[at].Start, watched) || IsAmid(steps[at].End, watched)))
                return null;
            var until = Until(steps, at, step);
            if (!Range(steps[at].Start, until).All(minute => IsFree(step.Uses, minute)))
                return null;
            if (step.BakedWithinMinutes is { } within && BakedBy(bread, steps) - steps[at].Start > within)
                return null;
            if (step.ServedWithinMinutes is { } served && _bench.Time.ReadyBy - steps[at].Start > served)
                return null;
        }
        PlannedStep[] placed = [.. steps];
        foreach (var bake in bread.Bakes)
        {
            if (OvenFor(OvenUse.Of(bread, bake, steps), only) is not { } oven)
                return null;
            for (var at = bake.First; at <= bake.Last; at++)
                placed[at] = placed[at] with { Oven = oven };
        }
        return placed;
    }

    /// <summary>
    /// The first oven that has room, counted from 1; null if there is none, or somebody would have to see to it amid a demonstration.
    /// </summary>
    private int? OvenFor(OvenUse wanted, int? only)
    {
        if (_watched.Exists(watched => IsAttended(wanted, watched.Start, watched.End)))
            return null;
        var oven = Array.FindIndex(_ovens, uses =>
            (only is not { } named || uses == _ovens[named - 1])
            && wanted.Start >= _bench.Ovens.HeatUpMinutes
            && wanted.FitsAmong(uses, _bench.Ovens)
        );
        return oven < 0 ? null : oven + 1;
    }

    /// <summary>Takes what the steps need, or gives it back where the sign is -1.</summary>
    private void Book(IReadOnlyList<PlannedStep> steps, int sign)
    {
        var load = steps[0].Load;
        var bread = _bench.Breads[load.Bread];
        for (var at = 0; at < steps.Count; at++)
        {
            var step = bread.Steps[at];
            foreach (var minute in Range(steps[at].Start, steps[at].End))
                _people[load.Maker.Team][minute] += sign * Math.Min(step.People, load.Maker.IsInstructor ? 1 : _bench.PeoplePerTeam);
            Take(step.Uses, steps[at].Start, Until(steps, at, step), sign);
            if (step.IsPutIn)
                Note([steps[at].Start, steps[at].End], sign);
        }
        foreach (var bake in bread.Bakes)
        {
            var (uses, use) = (_ovens[steps[bake.First].Oven!.Value - 1], OvenUse.Of(bread, bake, steps));
            if (sign > 0)
                uses.Add(use);
            else
                uses.RemoveAt(uses.FindLastIndex(other => other.Is(use)));
        }
    }

    private void Note(int[] minutes, int sign)
    {
        foreach (var minute in minutes)
        {
            if (sign > 0)
                _putIn.Add(minute);
            else
                _putIn.Remove(minute);
        }
    }

    private static bool IsAmid(int minute, (int Start, int End) watched) => watched.Start < minute && minute < watched.End;

    private static int Until(IReadOnlyList<PlannedStep> steps, int at, BenchStep step) =>
        step.IsHandsOn || at + 1 == steps.Count ? steps[at].End : steps[at + 1].Start;

    private static IEnumerable<int> Range(int start, int end) => Enumerable.Range(start, end - start);

    /// <summary>
    /// True if something goes in, comes out or is turned up or down amid some minutes, so that somebody has to see to it.
    /// </summary>
    private static bool IsAttended(OvenUse use, int start, int end) =>
        use.Stages.SelectMany(stage => new[] { stage.Start, stage.End }).Any(minute => start < minute && minute < end);

    private static int BakedBy(BenchBread bread, IReadOnlyList<PlannedStep> steps) => steps[bread.Bake?.Last ?? steps.Count - 1].End;

    /// <summary>True if all of several pieces of equipment are there in a minute; a kind may stand among them twice.</summary>
    private bool IsFree(IReadOnlyList<EquipmentCount> uses, int minute) =>
        uses.All(use =>
            _bench.CountOf(use.Kind) is not { } count
            || _equipment[use.Kind][minute] + uses.Where(each => each.Kind == use.Kind).Sum(each => each.Count) <= count
        );

    private void Take(IReadOnlyList<EquipmentCount> uses, int start, int end, int sign)
    {
        foreach (var use in uses.Where(use => _equipment.ContainsKey(use.Kind)))
        {
            foreach (var minute in Range(start, end))
                _equipment[use.Kind][minute] += sign * use.Count;
        }
    }

    private void Everybody(Demonstration shown, int start, int sign)
    {
        for (var who = 0; who < _people.Length; who++)
        {
            foreach (var minute in Range(start, start + shown.Minutes))
                _people[who][minute] += sign * (who == 0 ? 1 : _bench.PeoplePerTeam);
        }
        Take(shown.Uses, start, start + shown.Minutes, sign);
        if (sign > 0)
            _watched.Add((start, start + shown.Minutes));
        else
            _watched.Remove((start, start + shown.Minutes));
    }
}
