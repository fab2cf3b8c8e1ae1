using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Ovens;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Tempering;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Sensory;
using ClassKit.Lessons.Stations;
using ClassKit.Pages.Numbers;
using ClassKit.Pages.Packs;
using ClassKit.Wording.Counts;

namespace ClassKit.Pages.Benches;

/// <summary>A bench plan as lists of what to do when.</summary>
internal static class RunSheets
{
    /// <summary>The instructor's sheet, then each team's by shifts.</summary>
    public static IEnumerable<IReadOnlyList<RunEntry>> All(BenchPlan plan, ClassProfile profile, IReadOnlyList<FormulaCard> cards) =>
        plan.Shifts.SelectMany(shift => shift.Makers).Select(team => Team(plan, team, profile)).Prepend(Instructor(plan, profile, cards));

    /// <summary>What one team does and watches, in order of time.</summary>
    public static IReadOnlyList<RunEntry> Team(BenchPlan plan, Maker team, ClassProfile profile) =>
        Sorted([
            .. Begins(plan),
            .. Steps(plan, team, profile.Units),
            .. plan.Demonstrations.Select(shown => new RunEntry(
                shown.Start,
                $"Watch: {shown.Demonstration.Name}",
                "",
                shown.End,
                "everybody",
                true
            )),
            .. Ends(plan),
        ]);

    /// <summary>What the instructor shows, sets and makes, in order of time.</summary>
    public static IReadOnlyList<RunEntry> Instructor(BenchPlan plan, ClassProfile profile, IReadOnlyList<FormulaCard> cards) =>
        Sorted([
            .. StarterMix
                .Of(cards, plan)
                .Select(mix => new RunEntry(
                    mix.Mixed!.Value,
                    $"Mix the starter{StarterText.Stage(mix)}",
                    mix.Card.Bread.Formula.Title,
                    mix.Weighed,
                    $"{StarterText.Parts(mix.InAll, profile)}; stands at {KitchenText.Temperature(mix.Build.Temperature, profile.Units)}",
                    true
                )),
            .. Begins(plan),
            .. plan.Demonstrations.Select(shown => new RunEntry(
                shown.Start,
                $"Show: {shown.Demonstration.Name}",
                "",
                shown.End,
                string.Join(", ", ["to all teams", .. shown.Demonstration.Uses.Select(use => use.ToString())]),
                true
            )),
            .. plan.Shifts.Select((shift, at) => Begin(plan, shift, at)),
            .. AtOneDoor(AtOnce(OvenCourse.Of(plan).SelectMany(course => Oven(plan, course, profile.Units)).Concat(HotTins(plan)))),
            .. Appliances(plan),
            .. OutOfTheCold(plan, profile.Start),
            .. Steps(plan, Maker.Instructor, profile.Units),
            .. Ends(plan),
        ]);

    private static IReadOnlyList<RunEntry> Sorted(IReadOnlyList<RunEntry> entries) =>
        [
            .. entries
                .OrderBy(entry => entry.Minute)
                .ThenByDescending(entry => entry.IsWork)
                .ThenByDescending(entry => entry.IsOut)
                .ThenBy(entry => entry.IsSwitch)
                .ThenBy(entry => entry.Bread, StringComparer.Ordinal),
        ];

    /// <summary>What is done alike to several ovens in one minute is one line: a large kitchen's morning stays on one sheet.</summary>
    internal static IEnumerable<RunEntry> AtOnce(IEnumerable<OvenEntry> entries) =>
        entries
            .GroupBy(each => each with { Oven = 0 })
            .Select(alike =>
                alike.Key.Entry with
                {
                    What =
                        $"{alike.Key.Before} {Counted.Noun(alike.Count(), "oven")} {Phrases.List([.. alike.Select(each => each.Oven).Order().Select(oven => $"{oven}")])}{alike.Key.After}",
                }
            );

    /// <summary>What goes through one door in one minute is one line, whatever it is: the door opens once.</summary>
    internal static IEnumerable<RunEntry> AtOneDoor(IEnumerable<RunEntry> entries) =>
        entries
            .GroupBy(entry => entry.IsAtDoor ? entry with { Bread = "", Note = "" } : entry)
            .Select(alike =>
                alike.ToList() is [var only]
                    ? only
                    : alike.Key with
                    {
                        Bread = string.Join(
                            "; ",
                            alike.OrderBy(entry => entry.Bread, StringComparer.Ordinal).Select(entry => $"{entry.Bread} ({entry.Note})")
                        ),
                    }
            );

    private static IEnumerable<RunEntry> Steps(BenchPlan plan, Maker maker, UnitSystem units)
    {
        foreach (var planned in plan.Steps.Where(step => step.Load.Maker == maker))
        {
            var bread = plan.Class.Breads[planned.Load.Bread];
            var step = bread.Steps[planned.Step];
            yield return new(
                planned.Start,
                $"{bread.StepsDoneBefore + planned.Step + 1}. {step.Name}",
                bread.Name,
                planned.End,
                Note(step, planned, units),
                step.IsHandsOn
            )
            {
                IsAtDoor = planned.Oven is not null,
                Hands = step.People,
            };
        }
    }

    private static string Note(BenchStep step, PlannedStep planned, UnitSystem units)
    {
        List<string> notes = [];
        if (planned.Oven is { } oven)
            notes.Add($"oven {oven} at {KitchenText.Oven(step.Oven!.Temperature, units)}");
        if (BenchText.Takes(step, units) is { Length: > 0 } takes)
            notes.Add(takes);
        notes.AddRange(BenchText.Warms(step, units));
        return string.Join(", ", notes);
    }

    /// <summary>
    /// What stands before it is used is taken out in time, for whoever is first to use it; some of it before the class begins.
    /// </summary>
    private static IEnumerable<RunEntry> OutOfTheCold(BenchPlan plan, ClassStart? start) =>
        from taken in TakenOut.Of(plan)
        let bread = plan.Class.Breads[taken.For.Bread]
        select new RunEntry(
            taken.Minute,
            $"Take {taken.Heat.What} out of the refrigerator",
            bread.Name,
            null,
            $"in pieces, for {bread.Steps[taken.For.Step].Name} at {KitchenText.Clock(taken.Start, start)}: {BenchText.Teams(taken.Makers, plan.Class)}",
            true
        );

    private static IEnumerable<RunEntry> Begins(BenchPlan plan) =>
        plan.Class.Time.WorkFrom > 0
            ? [new(0, "Begin: cautions, guesses in ink", "", plan.Class.Time.WorkFrom, "cards and observation sheets out", true)]
            : [];

    /// <summary>
    /// Tins that heat in their oven come out, are filled and go back by twos, so that its door is never open for all of them at once.
    /// </summary>
    private static IEnumerable<OvenEntry> HotTins(BenchPlan plan)
    {
        var filled = plan
            .Steps.Where(step => step.Oven is not null && plan.Class.Breads[step.Load.Bread].Steps[step.Step].IsHandsOn)
            .GroupBy(step => (step.Start, step.End, step.Load.Bread, step.Oven));
        foreach (var group in filled)
        {
            List<Maker[]> turns = [.. group.Select(step => step.Load.Maker).Chunk(2)];
            foreach (var (turn, makers) in turns.Index())
                yield return new(
                    group.Key.Oven!.Value,
                    "Tins out of",
                    ", filled, and in again",
                    new(
                        group.Key.Start + (group.Key.End - group.Key.Start) * turn / turns.Count,
                        "",
                        plan.Class.Breads[group.Key.Bread].Name,
                        null,
                        $"{BenchText.Teams(makers, plan.Class)}; door shut in between",
                        true
                    )
                );
            yield return new(
                group.Key.Oven!.Value,
                "All tins in",
                ", door shut",
                new(group.Key.End, "", plan.Class.Breads[group.Key.Bread].Name, null, "write the time on the door", true)
            );
        }
        foreach (
            var done in plan
                .Steps.Where(step =>
                    plan.Class.Breads[step.Load.Bread].Steps[step.Step] is { IsHandsOn: false, Oven: not null } && IsLastInOven(plan, step)
                )
                .GroupBy(step => (step.End, step.Load.Bread, step.Oven))
        )
            yield return new(
                done.Key.Oven!.Value,
                "Out of",
                "",
                new(
                    done.Key.End,
                    "",
                    plan.Class.Breads[done.Key.Bread].Name,
                    null,
                    BenchText.Teams([.. done.Select(step => step.Load.Maker)], plan.Class),
                    true
                )
                {
                    IsOut = true,
                    IsAtDoor = true,
                }
            );
    }

    /// <summary>What heats up besides ovens goes on in time for the first that takes it, and off behind the last.</summary>
    private static IEnumerable<RunEntry> Appliances(BenchPlan plan)
    {
        foreach (var count in plan.Class.Equipment.Where(count => count.HeatUpMinutes > 0))
        {
            var uses = plan
                .Steps.Where(step => plan.Class.Breads[step.Load.Bread].Steps[step.Step].Uses.Any(use => use.Kind == count.Kind))
                .ToList();
            var shown = plan.Demonstrations.Where(shown => shown.Demonstration.Uses.Any(use => use.Kind == count.Kind)).ToList();
            if (uses.Count + shown.Count == 0)
                continue;
            var first = uses.Select(step => (step.Start, Name: plan.Class.Breads[step.Load.Bread].Name))
                .Concat(shown.Select(each => (each.Start, each.Demonstration.Name)))
                .MinBy(use => use.Start);
            var name = Counted.Noun(count.Count, (count.Kind.PlaceOf ?? count.Kind).One);
            yield return new(
                Math.Max(0, plan.FreeAt(first.Start - count.HeatUpMinutes)),
                $"Switch the {name} on",
                first.Name,
                null,
                "from cold",
                true
            )
            {
                IsSwitch = true,
            };
            yield return new(
                uses.Select(step => step.End).Concat(shown.Select(each => each.End)).Max(),
                $"Switch the {name} off",
                "",
                null,
                "",
                true
            )
            {
                IsSwitch = true,
            };
        }
    }

    private static bool IsLastInOven(BenchPlan plan, PlannedStep step) =>
        plan.Class.Breads[step.Load.Bread].Bakes.Any(bake => bake.Last == step.Step);

    private static RunEntry Begin(BenchPlan plan, Shift shift, int at)
    {
        var first = plan.Steps.Where(step => shift.Makers.Contains(step.Load.Maker)).MinBy(step => step.Start)!;
        var who = plan.Shifts.Count == 1 ? "All teams begin" : $"Shift {at + 1} begins";
        return new(first.Start, who, plan.Class.Breads[first.Load.Bread].Name, null, BenchText.Teams(shift.Makers, plan.Class), true);
    }

    /// <summary>Setting an oven, each bake that goes in, and switching it off.</summary>
    private static IEnumerable<OvenEntry> Oven(BenchPlan plan, OvenCourse course, UnitSystem units)
    {
        var before = (OvenSpan?)null;
        foreach (var span in course.Spans)
        {
            if (before?.Dial != span.Dial)
            {
                var heat = KitchenText.Oven(span.Dial, units);
                var goesOn = before is not null && span.Inside.Any(before.Inside.Contains);
                var next = course.Spans.First(later => later.From >= span.From && !later.IsEmpty);
                yield return new(
                    course.Oven,
                    goesOn ? "Turn" : "Set",
                    $" to {heat}",
                    new(
                        span.From,
                        "",
                        Names(plan, next.Breads),
                        null,
                        before is null ? "from cold"
                            : goesOn ? "with the bread in it"
                            : "",
                        true
                    )
                );
            }
            foreach (var bread in span.Breads)
            {
                var came = span.MakersOf(bread).Where(maker => before?.Inside.Contains(new(maker, bread)) != true).ToList();
                if (came.Count > 0)
                    yield return new(
                        course.Oven,
                        "Into",
                        "",
                        new(
                            span.From,
                            "",
                            Names(plan, [bread]),
                            course
                                .Spans.SkipWhile(later => later.From < span.From)
                                .TakeWhile(later => later.Inside.Contains(new(came[0], bread)))
                                .Last()
                                .To,
                            BenchText.Teams(came, plan.Class),
                            false
                        )
                        {
                            IsAtDoor = true,
                        }
                    );
            }
            before = span;
        }
        yield return new(course.Oven, "Switch", " off", new(course.Spans[^1].To, "", "", null, "", true) { IsSwitch = true });
    }

    private static string Names(BenchPlan plan, IReadOnlyList<int> breads) =>
        string.Join(", ", breads.Select(bread => plan.Class.Breads[bread].Name));

    private static IEnumerable<RunEntry> Ends(BenchPlan plan)
    {
        var time = plan.Class.Time;
        if (time.TastingMinutes == 0)
            yield return new(time.ReadyBy, "Tasting begins", "", null, "everything is ready", true);
        else
        {
            var course = TastingCourse.Of(time.ReadyBy, time.TastingMinutes);
            yield return new(
                course.From,
                "Tasting begins: measure, cut, draw",
                "",
                course.BlindFrom ?? course.TalkFrom,
                "observation sheet",
                true
            );
            if (course.BlindFrom is { } blind)
                yield return new(
                    blind,
                    "Blind tasting, then the triangle",
                    "",
                    course.TalkFrom,
                    "tasting sheet; plate, cups, water at each seat",
                    true
                );
            yield return new(
                course.TalkFrom,
                "Compare with the guesses, and talk",
                "",
                course.To,
                "the other side of the observation sheet",
                true
            );
        }
        if (time.CleanupMinutes > 0)
            yield return new(time.ReadyBy + time.TastingMinutes, "Clean up", "", time.DoneBy, "", true);
    }
}
