using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>
/// Reads in what a bread of a series differs: <c>without Fine salt</c>, <c>Baking soda 4 %</c>, <c>Baking soda at 50 % strength</c>,
/// <c>Baking powder, double-acting kept open 6 months</c>, <c>Proof 20–25 min</c>, <c>held 20 min after Mix</c>.
/// </summary>
internal static partial class SeriesChanges
{
    private const string Ways =
        "Write one of: `without Fine salt`, `Baking soda 4 %`, `Baking soda at 50 % strength`, `Baking powder, double-acting grown old`, `Proof 20–25 min`, `held 20 min after Mix`, with `;` between several.";

    private static readonly Bounds Strength = new(0, false, 99);

    /// <summary>One change, or null with the reason noted.</summary>
    /// <param name="text">As it stands in the brackets.</param>
    /// <param name="bread">The bread as written.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static SeriesChange? Read(Located text, LessonFormula bread, ProblemList problems)
    {
        if (Without().Match(text.Text) is { Success: true } without)
            return InFormula(text with { Text = without.Groups["what"].Value }, bread, problems) is { } left
                ? new SeriesChange.LeftOut(left)
                : null;
        if (Held().Match(text.Text) is { Success: true } held)
            return After(held, text.Line, bread, problems);
        if (AtStrength().Match(text.Text) is { Success: true } weak)
            return Weakened(weak, text.Line, bread, problems);
        if (Aged().Match(text.Text) is { Success: true } aged)
            return GrownOld(aged, text.Line, bread, problems);
        if (Share().Match(text.Text) is { Success: true } share)
            return Shared(share, text.Line, bread, problems);
        if (Timed().Match(text.Text) is { Success: true } timed)
            return Taking(timed, text.Line, bread, problems);
        problems.Add(text.Line, $"`{text.Text}` does not say in what the bread of the series differs", Ways);
        return null;
    }

    private static SeriesChange.Held? After(Match held, int line, LessonFormula bread, ProblemList problems)
    {
        var minutes = int.Parse(held.Groups["minutes"].Value, CultureInfo.InvariantCulture);
        if (minutes == 0)
            problems.Add(
                line,
                $"`{held.Value}` holds the bread for no time",
                "Leave it out: the bread as written is part of the series already."
            );
        return Step(held.Groups["step"].Value, line, bread, problems) is { } step && minutes > 0
            ? new SeriesChange.Held(step, minutes)
            : null;
    }

    private static SeriesChange.Weakened? Weakened(Match weak, int line, LessonFormula bread, ProblemList problems)
    {
        var strength = Number.Read(new(weak.Groups["share"].Value, line), "The strength", Strength, problems);
        return InFormula(new(weak.Groups["what"].Value, line), bread, problems) is { } old && strength is { } left
            ? new SeriesChange.Weakened(old, PerHundred.Share(left))
            : null;
    }

    private static SeriesChange.Aged? GrownOld(Match aged, int line, LessonFormula bread, ProblemList problems)
    {
        if (InFormula(new(aged.Groups["what"].Value, line), bread, problems) is not { } old)
            return null;
        if (old.Role is IngredientRole.ChemicalLeavening or IngredientRole.Yeast)
            return new SeriesChange.Aged(old, Blanks().Replace(aged.Groups["how"].Value, " ").ToLowerInvariant());
        problems.Add(
            line,
            $"{old.Name} leavens nothing, so that no rise tells its age",
            "Name a powder, soda or yeast of the formula: `Baking powder, double-acting grown old`."
        );
        return null;
    }

    private static SeriesChange.Share? Shared(Match share, int line, LessonFormula bread, ProblemList problems)
    {
        var percent = Number.Read(new(share.Groups["share"].Value, line), "The percentage", Bounds.AboveZero, problems);
        if (KnownIngredient.Find(new(share.Groups["what"].Value, line), problems) is not { } what || percent is not { } much)
            return null;
        if (bread.Formula.Lines.Any(each => each.Ingredient.Id == what.Id && each.Percent.Equals(much)))
            problems.Add(
                line,
                $"`{share.Value}` is what {bread.Formula.Title} has as written",
                "Write in what this bread differs; the bread as written is part of the series already."
            );
        return new SeriesChange.Share(what, much);
    }

    private static SeriesChange.Timed? Taking(Match timed, int line, LessonFormula bread, ProblemList problems)
    {
        var min = int.Parse(timed.Groups["min"].Value, CultureInfo.InvariantCulture);
        var max = timed.Groups["max"].Success ? int.Parse(timed.Groups["max"].Value, CultureInfo.InvariantCulture) : min;
        if (max < min)
            problems.Add(line, $"The duration is `{timed.Value}`", "Write the shorter time first.");
        return Step(timed.Groups["step"].Value, line, bread, problems) is { } step ? new SeriesChange.Timed(step, min, max) : null;
    }

    private static string? Step(string name, int line, LessonFormula bread, ProblemList problems) =>
        BreadStep.Find(bread.Formula.Title, name.Trim(), line, [bread], true, problems)?.StepName;

    /// <summary>An ingredient that the bread has: only that can be left out or be old.</summary>
    private static Ingredient? InFormula(Located name, LessonFormula bread, ProblemList problems)
    {
        if (KnownIngredient.Find(name, problems) is not { } known)
            return null;
        if (bread.Formula.Lines.FirstOrDefault(line => line.Ingredient.Id == known.Id) is { } has)
            return has.Ingredient;
        problems.Add(
            name.Line,
            $"{bread.Formula.Title} has no {known.Name.ToLowerInvariant()}",
            NearestWord.Advice(known.Name, [.. bread.Formula.Lines.Select(line => line.Ingredient.Name)])
        );
        return null;
    }

    [GeneratedRegex(@"^without\s+(?<what>\S.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Without();

    [GeneratedRegex(@"^held\s+(?<minutes>[0-9]{1,4})\s*min\s+after\s+(?<step>\S.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Held();

    [GeneratedRegex(@"^(?<what>\S.*?)\s+at\s+(?<share>[0-9.]+)\s*%\s+strength$", RegexOptions.IgnoreCase)]
    private static partial Regex AtStrength();

    [GeneratedRegex(
        @"^(?<what>\S.*?),?\s+(?<how>grown\s+old|(kept\s+|left\s+)?open\s+(for\s+)?[0-9]+\s*(day|week|month|year)s?|[0-9]+\s*(day|week|month|year)s?\s+old)$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Aged();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"^(?<what>\S.*?)\s+(?<share>[0-9.]+)\s*%$")]
    private static partial Regex Share();

    [GeneratedRegex(@"^(?<step>\S.*?)\s+(?<min>[0-9]{1,4})(\s*[–-]\s*(?<max>[0-9]{1,4}))?\s*min$")]
    private static partial Regex Timed();
}
