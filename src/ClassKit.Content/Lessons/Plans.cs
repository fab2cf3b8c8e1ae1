using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Lessons;

namespace ClassKit.Content.Lessons;

/// <summary>Reads the instructor's timing: <c>1. **10 min.** What happens.</c> and below it what to say, quoted with <c>&gt;</c>.</summary>
internal static class Plans
{
    public static IReadOnlyList<PlanStep> Read(Section? section, int period, ProblemList problems)
    {
        var before = problems.Count;
        var steps = new List<PlanStep>();
        foreach (var entry in Lists.Entries(section, problems))
        {
            if (NamedItem.Read(entry.Text, "1. **10 min.** What happens.", problems) is not { } item)
                continue;
            if (Dimensions.Minutes.Read(item.Name, "The time", Dimensions.Period, problems) is { } minutes)
                steps.Add(new((int)Math.Round(minutes, MidpointRounding.AwayFromZero), item.Text.Text, entry.Quote));
        }
        var total = steps.Sum(step => step.Minutes);
        if (section is not null && problems.Count == before && total > period)
            problems.Add(section.Line, $"The plan takes {total} min, and the period is {period} min", "Shorten the plan, or change `period` in the front matter.");
        return steps;
    }
}
