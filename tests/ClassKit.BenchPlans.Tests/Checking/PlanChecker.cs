using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Ovens;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Tempering;

namespace ClassKit.BenchPlans.Tests.Checking;

/// <summary>
/// Walks through a plan minute by minute and says everything that is wrong with it. Reads the class's data only: shares no reasoning with
/// what makes plans.
/// </summary>
internal sealed class PlanChecker
{
    private readonly BenchClass _bench;
    private readonly BenchPlan _plan;
    private readonly List<string> _faults = [];

    private readonly IReadOnlyList<OvenCourse> _told;
    private readonly IReadOnlyList<TakenOut> _taken;

    private PlanChecker(BenchClass bench, BenchPlan plan, IReadOnlyList<TakenOut>? taken) =>
        (_bench, _plan, _told, _taken) = (
            bench,
            plan,
            OvenCourse.Of(plan with { Class = bench }),
            taken ?? TakenOut.Of(plan with { Class = bench })
        );

    /// <summary>Everything that is wrong.</summary>
    /// <param name="bench">The class.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="taken">What the plan is said to have taken out of the refrigerator; null for what it does say.</param>
    public static IReadOnlyList<string> Faults(BenchClass bench, BenchPlan plan, IReadOnlyList<TakenOut>? taken = null)
    {
        var checker = new PlanChecker(bench, plan, taken);
        if (!checker.EverythingIsThere())
            return checker._faults;
        checker.StepsAreInTheirWindows();
        checker.DemonstrationsComeInTime();
        checker.WhatGoesFirstGoesFirst();
        checker.ColdThingsComeOutInTime();
        checker.InstructorIsFree();
        for (var minute = 0; minute < bench.Time.PeriodMinutes; minute++)
        {
            checker.HandsSuffice(minute);
            checker.EquipmentSuffices(minute);
        }
        for (var oven = 1; oven <= bench.Ovens.Count; oven++)
            checker.OvenIsFollowed(oven);
        return [.. checker._faults.Distinct()];
    }

    private bool EverythingIsThere()
    {
        for (var bread = 0; bread < _bench.Breads.Count; bread++)
        {
            var makers = _bench.Breads[bread].LeftToInstructor
                ? [0]
                : (_bench.Breads[bread].Teams ?? Enumerable.Range(1, _bench.Teams)).ToArray();
            foreach (var maker in makers)
            {
                var steps = Of(maker, bread);
                if (!steps.Select(step => step.Step).SequenceEqual(Enumerable.Range(0, _bench.Breads[bread].Steps.Count)))
                    Fault($"maker {maker} has not every step of bread {bread} in order");
            }
            if (_plan.Steps.Count(step => step.Load.Bread == bread) != makers.Length * _bench.Breads[bread].Steps.Count)
                Fault($"bread {bread} has steps of nobody");
        }
        if (!_plan.Demonstrations.Select(shown => shown.Demonstration).SequenceEqual(_bench.Demonstrations))
            Fault("the demonstrations are not those of the class");
        return _faults.Count == 0;
    }

    private void StepsAreInTheirWindows()
    {
        // Where a class would begin idle, all of it comes sooner, and the plan says by how much.
        var tasting = _bench.Time.PeriodMinutes - _bench.Time.CleanupMinutes - _bench.Time.TastingMinutes - _plan.Class.Time.SpareMinutes;
        foreach (var load in _plan.Steps.GroupBy(step => step.Load))
        {
            var bread = _bench.Breads[load.Key.Bread];
            var steps = load.OrderBy(step => step.Step).ToArray();
            if (steps[0].Start < _bench.Time.SetupMinutes)
                Fault($"{load.Key} begins during the set-up");
            if (steps[^1].End > tasting)
                Fault($"{load.Key} is not ready by the tasting");
            if (bread.KeepsMinutes is { } keeps && tasting - steps[^1].End > keeps)
                Fault($"{load.Key} stands too long before the tasting");
            for (var at = 0; at < steps.Length; at++)
            {
                var (asked, planned) = (bread.Steps[at], steps[at]);
                if (planned.End - planned.Start < asked.MinMinutes || planned.End - planned.Start > asked.MaxMinutes)
                    Fault($"{load.Key} step {at} does not take as long as it may");
                if ((planned.Oven is null) != (asked.Oven is null))
                    Fault($"{load.Key} step {at} is in an oven or out of it, against the method");
                if (planned.Oven is { } oven && (oven < 1 || oven > _bench.Ovens.Count))
                    Fault($"{load.Key} step {at} is in an oven that is not there");
                if (
                    asked.BakedWithinMinutes is { } within
                    && (steps.LastOrDefault(step => step.Oven is not null) ?? steps[^1]).End - planned.Start > within
                )
                    Fault($"{load.Key} is out of the refrigerator too long");
                if (asked.ServedWithinMinutes is { } served && tasting - planned.Start > served)
                    Fault($"{load.Key} stands too long from step {at} to the tasting");
                if (at == 0)
                    continue;
                var (before, wait) = (bread.Steps[at - 1], planned.Start - steps[at - 1].End);
                var staysIn = before is { Oven: not null, Wait.MinMinutes: 0 } && asked.Oven is not null;
                if (
                    staysIn
                        ? wait != 0 || planned.Oven != steps[at - 1].Oven
                        : wait < before.Wait.MinMinutes || wait > before.Wait.MaxMinutes
                )
                    Fault($"{load.Key} does not go on in time from step {at - 1} to step {at}");
            }
        }
    }

    /// <summary>No minute in which something is, or has been, where what should go first is still to come or not yet out.</summary>
    private void WhatGoesFirstGoesFirst()
    {
        foreach (var order in _bench.CookedFirst)
        {
            PlannedStep[] Cooked(int bread) =>
                [.. _plan.Steps.Where(step => step.Load.Bread == bread && _bench.Breads[bread].Steps[step.Step].Way == order.Way)];
            foreach (var first in Cooked(order.Bread))
            {
                if (
                    Cooked(order.Before)
                        .Any(then => then.Start < first.End && (!order.EachForItself || then.Load.Maker == first.Load.Maker))
                )
                    Fault($"{first.Load} is not cooked before bread {order.Before}");
            }
        }
    }

    private void DemonstrationsComeInTime()
    {
        // Where a class would begin idle, all of it comes sooner, and the plan says by how much.
        var tasting = _bench.Time.PeriodMinutes - _bench.Time.CleanupMinutes - _bench.Time.TastingMinutes - _plan.Class.Time.SpareMinutes;
        foreach (var shown in _plan.Demonstrations)
        {
            var end = shown.Start + shown.Demonstration.Minutes;
            if (shown.Start < _bench.Time.SetupMinutes || end > tasting)
                Fault($"{shown.Demonstration.Name} is shown outside the working time");
            if (shown.Demonstration.Before is { } before && _plan.Steps.Any(step => IsShownFor(step, before) && step.Start < end))
                Fault($"{shown.Demonstration.Name} is shown after somebody has begun");
            if (
                shown.Demonstration.After is { } after
                && !_plan.Steps.Any(step => step.Load.Bread == after.Bread && step.Step == after.Step && step.End <= shown.Start)
            )
                Fault($"{shown.Demonstration.Name} opens an oven or a bowl before anything in it is ready");
            if (
                _plan.Steps.Any(step =>
                    step.Oven is not null && (step.Start > shown.Start && step.Start < end || step.End > shown.Start && step.End < end)
                )
            )
                Fault($"an oven is seen to while all watch {shown.Demonstration.Name}");
            if (
                _plan.Steps.Any(step =>
                    _bench.Breads[step.Load.Bread].Steps[step.Step].IsPutIn
                    && (step.Start > shown.Start && step.Start < end || step.End > shown.Start && step.End < end)
                )
            )
                Fault($"a steamer is seen to while all watch {shown.Demonstration.Name}");
            if (shown.Demonstration.Load is { } own && Of(0, own)[0].Start != shown.Start)
                Fault($"{shown.Demonstration.Name} does not bake what it shows");
        }
    }

    /// <summary>The step itself, or the one called the same in a bread of its series.</summary>
    private bool IsShownFor(PlannedStep step, StepOfBread before)
    {
        var (bread, shown) = (_bench.Breads[step.Load.Bread], _bench.Breads[before.Bread]);
        return step.Load.Bread == before.Bread
            ? step.Step == before.Step
            : bread.VariantOf == shown.Id && bread.Steps[step.Step].Name == shown.Steps[before.Step].Name;
    }

    /// <summary>
    /// What a step needs less cold than it is kept has stood out long enough as it begins, and no longer than a demonstration makes
    /// necessary.
    /// </summary>
    private void ColdThingsComeOutInTime()
    {
        foreach (var step in _plan.Steps)
        {
            foreach (var heat in _bench.Breads[step.Load.Bread].Steps[step.Step].Heats.Where(heat => heat.StandsMinutes > 0))
            {
                var mine = _taken
                    .Where(each =>
                        each.For == new StepOfBread(step.Load.Bread, step.Step)
                        && each.Heat == heat
                        && each.Makers.Contains(step.Load.Maker)
                    )
                    .ToArray();
                var latest = step.Start - heat.StandsMinutes;
                if (mine.Length != 1 || mine[0].Start != step.Start)
                    Fault($"{heat.What} is not taken out for {step.Load}");
                else if (mine[0].Minute > latest)
                    Fault($"{heat.What} is taken out too late for {step.Load}");
                else if (Enumerable.Range(mine[0].Minute, latest - mine[0].Minute).Any(minute => !IsShowing(minute)))
                    Fault($"{heat.What} stands out for {step.Load} longer than it has to");
            }
        }
    }

    /// <summary>
    /// Nothing is asked of the instructor's hands amid a demonstration: no dial, no refrigerator. At its first minute they are still free.
    /// </summary>
    private void InstructorIsFree()
    {
        var byHand = _taken
            .Select(taken => taken.Minute)
            .Concat(
                _told.SelectMany(course =>
                    course
                        .Spans.Where((span, at) => at == 0 || course.Spans[at - 1].Dial != span.Dial)
                        .Select(span => span.From)
                        .Append(course.Spans[^1].To)
                )
            );
        if (byHand.Any(minute => IsShowing(minute) && IsShowing(minute - 1) && !_plan.Demonstrations.Any(shown => shown.Start == minute)))
            Fault("the instructor is asked for elsewhere amid a demonstration");
    }

    private bool IsShowing(int minute) =>
        _plan.Demonstrations.Any(shown => shown.Start <= minute && minute < shown.Start + shown.Demonstration.Minutes);

    private void HandsSuffice(int minute)
    {
        var shows = _plan.Demonstrations.Count(shown => shown.Start <= minute && minute < shown.Start + shown.Demonstration.Minutes);
        if (shows > 1)
            Fault("two demonstrations collide");
        for (var maker = 0; maker <= _bench.Teams; maker++)
        {
            var there = maker == 0 ? 1 : _bench.PeoplePerTeam;
            var busy = _plan
                .Steps.Where(step => step.Load.Maker.Team == maker && step.Start <= minute && minute < step.End)
                .Sum(step => Math.Min(there, _bench.Breads[step.Load.Bread].Steps[step.Step].People));
            if (busy > there)
                Fault($"maker {maker} has too few hands");
            if (shows > 0 && busy > 0)
                Fault($"maker {maker} works during a demonstration");
        }
    }

    private void EquipmentSuffices(int minute)
    {
        foreach (var count in _bench.Equipment)
        {
            var taken = 0;
            foreach (var planned in _plan.Steps)
            {
                var asked = _bench.Breads[planned.Load.Bread].Steps[planned.Step];
                var next = _plan.Steps.FirstOrDefault(step => step.Load == planned.Load && step.Step == planned.Step + 1);
                var until = asked.People > 0 || next is null ? planned.End : next.Start;
                if (planned.Start <= minute && minute < until)
                    taken += asked.Uses.Where(use => use.Kind == count.Kind).Sum(use => use.Count);
            }
            foreach (
                var shown in _plan.Demonstrations.Where(shown =>
                    shown.Start <= minute && minute < shown.Start + shown.Demonstration.Minutes
                )
            )
                taken += shown.Demonstration.Uses.Where(use => use.Kind == count.Kind).Sum(use => use.Count);
            if (taken > 0 && minute < count.HeatUpMinutes)
                Fault($"the {count.Kind.Many} are not hot yet");
            if (taken > count.Count)
                Fault($"there are not enough {count.Kind.Many}");
        }
    }

    /// <summary>The oven's own heat, which follows its dial no faster than ovens do, is walked through beside what is in it.</summary>
    private void OvenIsFollowed(int oven)
    {
        var uses = _plan.Steps.Where(step => step.Oven == oven).OrderBy(step => step.Start).ToArray();
        if (uses.Length == 0)
            return;
        double? heat = null;
        for (var minute = 0; minute < uses.Max(step => step.End); minute++)
        {
            var inside = uses.Where(step => step.Start <= minute && minute < step.End).ToArray();
            var dial = Asked(inside.FirstOrDefault() ?? uses.First(step => step.Start > minute)).Temperature.Celsius;
            if (inside.Length > 0)
            {
                if (minute < _bench.Ovens.HeatUpMinutes)
                    Fault($"oven {oven} is used before it is hot");
                if (inside.Sum(step => Asked(step).Places) > _bench.Ovens.Places)
                    Fault($"oven {oven} is overfull");
                if (inside.Any(step => Math.Abs(Asked(step).Temperature.Celsius - dial) > 1e-9))
                    Fault($"oven {oven} would need two temperatures at once");
                if (inside.Any(KeepsTogether))
                    DoorStaysShut(oven, inside);
                // What bakes may itself have been turned up or down; what comes new needs the heat ready.
                var comesNew = inside.Any(step =>
                    step.Start == minute
                    && (step.Step == 0 || _bench.Breads[step.Load.Bread].Steps[step.Step - 1] is not { Oven: not null, Wait.MinMinutes: 0 })
                );
                if (comesNew && heat is { } now && Math.Abs(now - dial) > 1e-3)
                    Fault($"oven {oven} cannot change its temperature in time");
                heat ??= dial;
            }
            var on = uses[0].Start - _bench.Ovens.HeatUpMinutes;
            // Amid a demonstration nobody turns a dial: then before it.
            OvenIsTold(
                oven,
                minute,
                dial,
                inside,
                isOn: heat is not null || minute >= on || (IsOn(oven, minute) && Enumerable.Range(minute, on - minute).All(IsShowing))
            );
            if (heat is { } from)
                heat =
                    from < dial
                        ? Math.Min(dial, from + _bench.Ovens.WarmingPerMinute.Kelvins)
                        : Math.Max(dial, from - _bench.Ovens.CoolingPerMinute.Kelvins);
        }
    }

    private bool IsOn(int oven, int minute) => _told.Any(course => course.Oven == oven && course.DialAt(minute) is not null);

    /// <summary>What the plan says of the oven is what is seen there.</summary>
    private void OvenIsTold(int oven, int minute, double dial, PlannedStep[] inside, bool isOn)
    {
        var told = _told
            .FirstOrDefault(course => course.Oven == oven)
            ?.Spans.Where(span => span.From <= minute && minute < span.To)
            .ToArray()
            ?? [];
        if (
            told.Length != (isOn ? 1 : 0)
            || (
                isOn
                && (Math.Abs(told[0].Dial.Celsius - dial) > 1e-9 || !told[0].Inside.ToHashSet().SetEquals(inside.Select(step => step.Load)))
            )
        )
            Fault($"oven {oven} is not what the plan tells of it");
    }

    private void DoorStaysShut(int oven, PlannedStep[] inside)
    {
        var bakes = inside
            .Select(step =>
                string.Join(
                    ',',
                    Of(step.Load.Maker.Team, step.Load.Bread)
                        .Where(each => SameBake(step, each.Step))
                        .Select(each => $"{step.Load.Bread}.{each.Step}:{each.Start}-{each.End}")
                )
            )
            .Distinct();
        if (bakes.Count() > 1)
            Fault($"oven {oven} is opened while it must stay shut");
    }

    /// <summary>True of two steps with nothing but oven between them, and no wait outside it.</summary>
    private bool SameBake(PlannedStep step, int other) =>
        Enumerable
            .Range(Math.Min(step.Step, other), Math.Abs(step.Step - other) + 1)
            .All(at => _bench.Breads[step.Load.Bread].Steps[at].Oven is not null)
        && Enumerable
            .Range(Math.Min(step.Step, other), Math.Abs(step.Step - other))
            .All(at => _bench.Breads[step.Load.Bread].Steps[at].Wait.MinMinutes == 0);

    private bool KeepsTogether(PlannedStep step)
    {
        var settings = _bench.Breads[step.Load.Bread].Steps.Where((_, at) => SameBake(step, at)).Select(each => each.Oven!).ToArray();
        return settings.Any(setting => setting.DoorShut) || settings.Select(setting => setting.Temperature).Distinct().Count() > 1;
    }

    private OvenSetting Asked(PlannedStep step) => _bench.Breads[step.Load.Bread].Steps[step.Step].Oven!;

    private PlannedStep[] Of(int maker, int bread) =>
        [.. _plan.Steps.Where(step => step.Load.Maker.Team == maker && step.Load.Bread == bread)];

    private void Fault(string fault) => _faults.Add(fault);
}
