using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Ovens;
using ClassKit.BenchPlans.Plans;
using ClassKit.Lessons.Classes;
using ClassKit.Pages.Numbers;
using ClassKit.Wording.Counts;

namespace ClassKit.Pages.Benches;

/// <summary>A bench plan as rows of bars.</summary>
internal static class Timeline
{
    /// <summary>What is shown, what each shift does, what is in each oven.</summary>
    public static IReadOnlyList<TimelineRow> Rows(BenchPlan plan, UnitSystem units) =>
        [.. Shown(plan), .. Work(plan), .. Ovens(plan, units)];

    private static IEnumerable<TimelineRow> Shown(BenchPlan plan)
    {
        if (plan.Demonstrations.Count > 0)
            yield return new(
                "",
                "Demonstrations",
                "",
                [
                    .. plan
                        .Demonstrations.OrderBy(shown => shown.Start)
                        .Select(
                            (shown, at) =>
                                new TimelineBar(
                                    shown.Demonstration.Name,
                                    Phrases.Letter(at).ToUpperInvariant(),
                                    shown.Start,
                                    shown.End,
                                    BarKind.Shown
                                )
                        ),
                ]
            );
    }

    private static IEnumerable<TimelineRow> Work(BenchPlan plan)
    {
        foreach (var shift in BenchText.AllShifts(plan))
        {
            var heading = BenchText.Of(shift, plan);
            for (var at = 0; at < plan.Class.Breads.Count; at++)
            {
                var bread = plan.Class.Breads[at];
                if (shift.Making(bread) is not { } making)
                    continue;
                var makers = bread.Teams is null || making.IsInstructor ? "" : BenchText.Teams(making.Makers, plan.Class);
                yield return new(heading, bread.Name, makers, [.. plan.StepsOf(new(making.Makers[0], at)).Select(step => Bar(step, bread))])
                {
                    Letter = Phrases.Letter(at),
                };
                heading = "";
            }
        }
    }

    private static TimelineBar Bar(PlannedStep planned, BenchBread bread)
    {
        var step = bread.Steps[planned.Step];
        return new(
            step.Name,
            $"{bread.StepsDoneBefore + planned.Step + 1}",
            planned.Start,
            planned.End,
            step.IsHandsOn ? BarKind.HandsOn
                : step.Oven is not null || step.IsPutIn ? BarKind.Oven
                : BarKind.Alone
        );
    }

    /// <summary>Ovens that do the same share a row: a large kitchen's drawing says it once, and stays on its sheet.</summary>
    private static IEnumerable<TimelineRow> Ovens(BenchPlan plan, UnitSystem units)
    {
        var courses = OvenCourse
            .Of(plan)
            .Select(course =>
                (
                    course.Oven,
                    Bars: course.Spans.Select((span, at) => Bar(span, at > 0 ? course.Spans[at - 1] : null, plan, units)).ToList()
                )
            );
        foreach (var (at, alike) in courses.GroupBy(course => string.Join('\n', course.Bars)).Index())
            yield return new(
                at == 0 ? "Ovens" : "",
                $"{Counted.Noun(alike.Count(), "Oven")} {Phrases.List([.. alike.Select(course => $"{course.Oven}")])}",
                "",
                alike.First().Bars
            );
    }

    /// <summary>The heat wherever it changes, and the letter of a bread wherever it goes in.</summary>
    private static TimelineBar Bar(OvenSpan span, OvenSpan? before, BenchPlan plan, UnitSystem units)
    {
        var heat = before?.Dial == span.Dial ? "" : KitchenText.Oven(span.Dial, units);
        var breads = string.Join(
            " ",
            span.Breads.Where(bread => before is null || !before.Breads.Contains(bread)).Order().Select(Phrases.Letter)
        );
        return new($"{heat} {breads}".Trim(), "", span.From, span.To, span.IsEmpty ? BarKind.Empty : BarKind.Oven);
    }
}
