using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Holds what the words of a demonstration name against what its brackets occupy.</summary>
internal static partial class DemonstrationNeeds
{
    public static void Check(
        LessonDemonstration shown,
        bool saysNoOven,
        int line,
        IReadOnlyList<LessonFormula> formulas,
        ProblemList problems
    )
    {
        var words = string.Join(". ", [shown.Name, shown.Text.OwnWords, .. shown.Tools]);
        if (Oven().IsMatch(words) && shown.Bake is null && !saysNoOven && !IsAfterBake(shown, formulas))
            problems.Add(
                line,
                $"`{shown.Name}` names an oven, and its brackets occupy none",
                "Write what it bakes (`oven 220 °C, bakes 35 min`), whose bread comes out for it (`after Popovers: Bake`), or `no oven` if none is opened for it."
            );
        if (shown.Bake is not null && shown.Ingredients.Count == 0)
            problems.Add(
                line,
                $"`{shown.Name}` bakes, and no ingredients are weighed out for it",
                "Write them behind the text: `*Ingredients: 250 g Whole milk; 5 g Fine salt.*`"
            );
        if (Kettle().IsMatch(words) && !Occupies(shown, "kettle", "burner"))
            problems.Add(
                line,
                $"`{shown.Name}` names a kettle, and its brackets occupy neither kettle nor burner",
                "Write `kettle` or `burner` into the brackets: it cannot be in use elsewhere meanwhile."
            );
        if (Pan().IsMatch(words) && !Occupies(shown, "burner"))
            problems.Add(
                line,
                $"`{shown.Name}` names a pan, and its brackets occupy no burner",
                "Write `burner` into the brackets: it cannot be in use elsewhere meanwhile."
            );
    }

    /// <summary>A bread that is out of the oven already opens none that must stay shut.</summary>
    private static bool IsAfterBake(LessonDemonstration shown, IReadOnlyList<LessonFormula> formulas) =>
        shown.After is { } after
        && formulas
            .First(formula => formula.Formula.Id == after.FormulaId)
            .Steps.SkipWhile(step => step.Name != after.StepName)
            .Skip(1)
            .All(step => !step.InOven);

    private static bool Occupies(LessonDemonstration shown, params string[] kinds) => shown.Uses.Any(use => kinds.Contains(use.Kind.One));

    [GeneratedRegex(@"\boven\b(?!\s+(gloves?|mitts?|cloths?)\b)", RegexOptions.IgnoreCase)]
    private static partial Regex Oven();

    [GeneratedRegex(@"\bkettle\b", RegexOptions.IgnoreCase)]
    private static partial Regex Kettle();

    [GeneratedRegex(@"\b(sauce)?pan\b", RegexOptions.IgnoreCase)]
    private static partial Regex Pan();
}
