using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads a method: <c>1. **Bake** (18–20 min, oven 190 °C). Until golden.</c></summary>
internal static partial class MethodSteps
{
    private const string HowCooked = "Write it in the brackets of the step: `(18–20 min, oven 190 °C)`, or how else it is cooked: ";

    private const string Example = "Write a step as `1. **Bake** (18–20 min, oven 190 °C). Until golden.`";

    public static IReadOnlyList<MethodStep> Read(Section? section, LessonTexts texts, ProblemList problems)
    {
        var before = problems.Count;
        List<(MethodStep Step, int Line)> steps =
        [
            .. Lists
                .Entries(section, problems)
                .Select(entry => (Step: Step(entry.Text, texts, problems)!, entry.Text.Line))
                .Where(read => read.Step is not null),
        ];
        if (section is not null && problems.Count == before && !steps.Exists(read => read.Step.IsBaking))
            problems.Add(
                section.Line,
                "No step says what the oven is set to, or what else the bread is cooked in",
                $"{HowCooked}{string.Join(", ", BenchWords.CookingExamples.Skip(1).Select(example => $"`{example}`"))}."
            );
        CheckWeighing(section, steps, problems.Count == before, problems);
        foreach (
            var (step, line) in steps.Where(
                (read, at) =>
                    read.Step is { InOven: true, Work.Reheats: false }
                    && Reheats().IsMatch(read.Step.Name)
                    && steps.Take(at).Any(before => before.Step.InOven)
            )
        )
            problems.Doubt(
                line,
                $"`{step.Name}` is in the oven again, and does not say `reheats`",
                "Write `reheats` into its brackets, or it is taken for more of the bake, which loses water and sets the middle."
            );
        foreach (var (step, line) in steps)
            UnusualHeat.Note(step, line, problems);
        foreach (
            var late in steps
                .Skip(steps.FindLastIndex(read => read.Step.InOven) + 1)
                .Where(read => read.Step.Work.OvenReady && steps.Exists(any => any.Step.InOven))
        )
            problems.Add(
                late.Line,
                $"`{late.Step.Name}` needs the oven ready, and nothing is baked after it",
                "Write `oven ready` at a step before the bake that the oven is ready for."
            );
        return [.. steps.Select(read => read.Step)];
    }

    /// <summary>Weighing takes time and a scale, so it is a step, and says so.</summary>
    private static void CheckWeighing(Section? section, List<(MethodStep Step, int Line)> steps, bool allRead, ProblemList problems)
    {
        foreach (
            var (step, line) in steps.Where(read =>
                Weighs().IsMatch($"{read.Step.Name} {read.Step.Text.OwnWords}") && !OccupiesScale(read.Step)
            )
        )
            problems.Add(
                line,
                $"`{step.Name}` weighs, and its brackets occupy no scale",
                "Write `scale` or `small scale` into the brackets: two teams cannot weigh on one at the same moment."
            );
        if (section is not null && allRead && !steps.Exists(read => OccupiesScale(read.Step)))
            problems.Add(
                section.Line,
                "No step says when the ingredients are weighed",
                "Weighing takes time too: `1. **Weigh** (4–6 min, scale, small scale, wait up to 20 min). Everything into bowls.`"
            );
    }

    private static bool OccupiesScale(MethodStep step) =>
        step.Work.Uses.Any(use => use.Kind == EquipmentKind.Scale || use.Kind == EquipmentKind.SmallScale);

    [GeneratedRegex(@"\b(re-?heat|warm)", RegexOptions.IgnoreCase)]
    private static partial Regex Reheats();

    [GeneratedRegex(@"\bweigh(ed|ing)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Weighs();

    private static MethodStep? Step(Located item, LessonTexts texts, ProblemList problems)
    {
        var match = Shape().Match(item.Text);
        if (!match.Success)
        {
            if (Timeless().Match(item.Text) is { Success: true } timeless)
                problems.Add(item.Line, $"`{timeless.Groups["name"].Value}` does not say how long it takes", Example);
            else
                problems.Add(item.Line, $"This step reads `{Prose.Excerpt(item.Text)}`", Example);
            return null;
        }
        if (Within().Match(match.Groups["text"].Value) is { Success: true } within)
            problems.Add(
                item.Line,
                $"Within the step `{match.Groups["name"].Value}` there begins another, `{within.Groups["name"].Value}`",
                "Give every step a line and a number of its own: `2. **Bake** (18–20 min, oven 190 °C).`"
            );
        var conditions = match.Groups["conditions"].Value.Split(',', StringSplitOptions.TrimEntries);
        if (Duration(new(conditions[0], item.Line), problems) is not var (min, max))
            return null;
        var rest = StepConditions.Read(conditions.Skip(1), max, item.Line, problems);
        return new(
            match.Groups["name"].Value,
            texts.Read(item with { Text = match.Groups["text"].Value }),
            min,
            max,
            rest.Temperature,
            rest.Way
        )
        {
            Each = rest.Each,
            Work = rest.Work,
        };
    }

    private static (int Min, int Max)? Duration(Located text, ProblemList problems)
    {
        var match = Minutes().Match(text.Text);
        if (!match.Success)
        {
            problems.Add(
                text.Line,
                $"The duration is `{text.Text}`",
                text.Text.StartsWith("each ", StringComparison.OrdinalIgnoreCase)
                    ? "How long the whole step takes stands first: `(8–10 min, pan 230 °C, each 1–2 min)`."
                    : "Write whole minutes, such as `5 min` or `5–8 min`."
            );
            return null;
        }
        var min = int.Parse(match.Groups["min"].Value, CultureInfo.InvariantCulture);
        var max = match.Groups["max"].Success ? int.Parse(match.Groups["max"].Value, CultureInfo.InvariantCulture) : min;
        if (min <= max)
            return (min, max);
        problems.Add(text.Line, $"The duration is `{text.Text}`", "Write the shorter time first.");
        return null;
    }

    [GeneratedRegex(@"^\*\*(?<name>[^*]+?)\.?\*\*\s*\((?<conditions>[^)]+)\)\.?\s*(?<text>\S.*)$")]
    private static partial Regex Shape();

    [GeneratedRegex(@"^\*\*(?<name>[^*]+?)\.?\*\*(?!\s*\()")]
    private static partial Regex Timeless();

    [GeneratedRegex(@"\*\*(?<name>[^*]+?)\.?\*\*\s*\([0-9]")]
    private static partial Regex Within();

    [GeneratedRegex(@"^(?<min>[0-9]{1,4})(\s*[–-]\s*(?<max>[0-9]{1,4}))?\s*min$")]
    private static partial Regex Minutes();
}
