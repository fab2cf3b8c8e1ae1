using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Stations;

/// <summary>What stands at a team's bench.</summary>
public static class TeamStation
{
    /// <summary>Every tool once, in the order in which the lesson's breads name them.</summary>
    /// <param name="lesson">What is baked.</param>
    /// <param name="plan">How many breads are under way at once; without a plan all of them.</param>
    public static IReadOnlyList<StationTool> Of(Lesson lesson, BenchPlan? plan)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return
        [
            .. lesson
                .Formulas.Where(formula => !IsLeftToInstructor(formula, plan))
                .SelectMany(formula => formula.Equipment.Select(tool => (Formula: formula, Tool: tool)))
                .GroupBy(need => need.Tool.Name, StringComparer.OrdinalIgnoreCase)
                .Select(needs => new StationTool(
                    needs.First().Tool.Name,
                    needs.All(need => need.Tool.IsShared)
                        ? needs.Max(need => need.Tool.Count)
                        : AtOnce([.. needs.Select(need => (need.Formula, need.Tool.Count))], plan),
                    [.. needs.Select(need => need.Formula).Distinct()],
                    needs.All(need => need.Tool.IsShared)
                )),
        ];
    }

    private static bool IsLeftToInstructor(LessonFormula formula, BenchPlan? plan) =>
        plan is not null && plan.Class.Breads.Any(bread => bread.Id == formula.Formula.Id && bread.LeftToInstructor);

    /// <summary>The most that are needed in any one minute, over all teams' plans.</summary>
    private static int AtOnce(IReadOnlyList<(LessonFormula Formula, int Count)> needs, BenchPlan? plan)
    {
        // Without a plan every bread may be under way at once; of a series a team has one.
        if (plan is null)
            return needs.GroupBy(need => need.Formula.Place?.OfId ?? need.Formula.Formula.Id).Sum(of => of.Max(need => need.Count));
        return Enumerable
            .Range(1, plan.Class.Teams)
            .Max(team =>
            {
                var spans = needs
                    .Select(need => (need.Count, Span: SpanOf(need.Formula, team, plan)))
                    .Where(need => need.Span is not null)
                    .ToList();
                return spans
                    .Select(begun =>
                        spans
                            .Where(other => other.Span!.Value.From <= begun.Span!.Value.From && begun.Span.Value.From < other.Span.Value.To)
                            .Sum(other => other.Count)
                    )
                    .DefaultIfEmpty(needs.Max(need => need.Count))
                    .Max();
            });
    }

    private static (int From, int To)? SpanOf(LessonFormula formula, int team, BenchPlan plan)
    {
        var bread = Enumerable.Range(0, plan.Class.Breads.Count).FirstOrDefault(at => plan.Class.Breads[at].Id == formula.Formula.Id, -1);
        var steps = plan.StepsOf(new(Maker.OfTeam(team), bread)).ToList();
        return steps.Count == 0 ? null : (steps.Min(step => step.Start), steps.Max(step => step.End));
    }
}
