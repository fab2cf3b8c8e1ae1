using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads demonstrations: <c>1. **Stirring down** (3 min, before Batter buns: Stir down). What is shown.</c></summary>
internal static partial class DemonstrationList
{
    private const string Example =
        "Write a demonstration as `1. **Stirring down** (3 min, before Batter buns: Stir down). What is shown. *With: probe thermometer, small pan.*`";

    /// <summary>The demonstrations, held against the breads that they belong to.</summary>
    /// <param name="section">May be absent: not every lesson shows something to all at once.</param>
    /// <param name="texts">The texts of the file.</param>
    /// <param name="formulas">The lesson's breads, as many as could be read.</param>
    /// <param name="allRead">False if some bread could not be read; then none is called unknown.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static IReadOnlyList<LessonDemonstration> Read(
        Section? section,
        LessonTexts texts,
        IReadOnlyList<LessonFormula> formulas,
        bool allRead,
        ProblemList problems
    ) =>
        [
            .. Lists
                .Entries(section, problems)
                .Select(entry => Demonstration(entry.Text, texts, formulas, allRead, problems))
                .OfType<LessonDemonstration>(),
        ];

    private static LessonDemonstration? Demonstration(
        Located item,
        LessonTexts texts,
        IReadOnlyList<LessonFormula> formulas,
        bool allRead,
        ProblemList problems
    )
    {
        var match = Shape().Match(item.Text);
        if (!match.Success)
        {
            problems.Add(item.Line, $"This demonstration reads `{Prose.Excerpt(item.Text)}`", Example);
            return null;
        }
        var minutes = int.Parse(match.Groups["minutes"].Value, CultureInfo.InvariantCulture);
        if (minutes == 0)
            problems.Add(item.Line, "The demonstration takes 0 min", "Write how long it takes.");
        var conditions = new DemonstrationConditions(match.Groups["conditions"].Value, item.Line, formulas, allRead, problems);
        var shown = new LessonDemonstration(
            match.Groups["name"].Value,
            minutes,
            conditions.Before?.FormulaId ?? "",
            conditions.Before?.StepName ?? "",
            texts.Read(item with { Text = match.Groups["text"].Value })
        )
        {
            Tools = match.Groups["tools"].Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries),
            Ingredients =
            [
                .. match
                    .Groups["ingredients"]
                    .Value.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                    .Select(each => Ingredient(new(each, item.Line), problems))
                    .OfType<WeighedIngredient>(),
            ],
            Uses = conditions.Uses,
            After = conditions.After,
            Bake = conditions.Bake,
            ControlOf = conditions.Control,
        };
        if (shown.Bake is { } bake && bake.Minutes < minutes)
            problems.Add(
                item.Line,
                $"`{shown.Name}` takes {minutes} min and what it bakes {bake.Minutes} min",
                "It bakes from the beginning of the demonstration, so at least as long: `bakes 35 min`."
            );
        // A bread that could not be read may be the one that it comes after.
        if (allRead)
            DemonstrationNeeds.Check(shown, conditions.SaysNoOven, item.Line, formulas, problems);
        return shown;
    }

    /// <summary>A mass and what of: <c>250 g Whole milk</c>.</summary>
    private static WeighedIngredient? Ingredient(Located text, ProblemList problems)
    {
        var match = Amount().Match(text.Text);
        if (!match.Success)
        {
            problems.Add(
                text.Line,
                $"The demonstration's ingredients hold `{text.Text}`",
                "Write how much of what, with `;` between them: `*Ingredients: 250 g Whole milk; 5 g Fine salt.*`"
            );
            return null;
        }
        var mass = Dimensions.Mass.Read(text with { Text = match.Groups["mass"].Value }, "The mass", Bounds.AboveZero, problems);
        return KnownIngredient.Find(text with { Text = match.Groups["name"].Value }, problems) is { } known && mass is { } much
            ? new(known, much)
            : null;
    }

    [GeneratedRegex(
        @"^\*\*(?<name>[^*]+?)\.?\*\*\s*\((?<minutes>[0-9]{1,3})\s*min(\s*,\s*(?<conditions>[^)]+))?\)\.?\s*(?<text>\S.*?)(\s*\*With:\s*(?<tools>[^*]*[^*.])\.?\*)?(\s*\*Ingredients:\s*(?<ingredients>[^*]*[^*.])\.?\*)?$"
    )]
    private static partial Regex Shape();

    [GeneratedRegex(@"^(?<mass>[0-9.]+\s*[a-z]+)\s+(?<name>\S.*)$")]
    private static partial Regex Amount();
}
