using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;
using ClassKit.Terms.Rules;

namespace ClassKit.Content.Rubrics;

/// <summary>Reads what a resit counts for: <c>better</c>, or <c>replaces, at most 70 %</c>.</summary>
internal static class ResitLine
{
    private const string Cap = "at most ";
    private static readonly Bounds Caps = new(0, false, 100);
    private static readonly Dictionary<string, ResitChoice> Choices = new()
    {
        ["replaces"] = ResitChoice.Replaces,
        ["better"] = ResitChoice.Better,
    };

    public static ResitRule? Read(Located line, ProblemList problems)
    {
        var pieces = line.Text.Split(',', 2, StringSplitOptions.TrimEntries);
        if (!Choices.TryGetValue(pieces[0].ToLowerInvariant(), out var choice))
        {
            problems.Add(
                line.Line,
                $"`resit` is `{line.Text}`",
                $"{NearestWord.Advice(pieces[0], [.. Choices.Keys])} A limit goes behind a comma: `better, at most 70 %`."
            );
            return null;
        }
        if (pieces.Length == 1)
            return new(choice, 1);
        if (!pieces[1].StartsWith(Cap, StringComparison.OrdinalIgnoreCase))
        {
            problems.Add(line.Line, $"`resit` is limited by `{pieces[1]}`", "Write a limit as in `better, at most 70 %`.");
            return null;
        }
        return
            Dimensions.Percent.Read(line with { Text = pieces[1][Cap.Length..].Trim() }, "The limit of `resit`", Caps, problems)
                is { } percent
            ? new(choice, Unit.Percent.Held((decimal)percent))
            : null;
    }
}
