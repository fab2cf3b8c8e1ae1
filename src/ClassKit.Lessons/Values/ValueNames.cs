using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Lessons.Values;

/// <summary>
/// The computed values that a lesson's text can name in braces: <c>{popovers.height}</c>, or in the popovers' own file <c>{height}</c>.
/// </summary>
public static class ValueNames
{
    /// <summary>Of the class and its kitchen.</summary>
    public static IReadOnlyList<string> OfClass { get; } =
    ["students", "teams", "period", "kitchen_temperature", "altitude", "air_pressure", "boiling_point"];

    /// <summary>Of every formula.</summary>
    private static readonly string[] OfEveryFormula =
    [
        "pieces",
        "piece_mass",
        "dough",
        "flour",
        "mix_temperature",
        "heat",
        "oven",
        "oven_end",
        "time",
        "hydration",
        "added_liquid",
        "gas_made",
        "gas_held",
        "steam_made",
        "steam_held",
        "mass_after",
        "bake_loss",
        "inside",
    ];

    /// <summary>Of one formula, its ingredients by their ids; nothing that cannot be computed for it.</summary>
    public static IReadOnlyList<string> Of(LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return
        [
            .. OfEveryFormula,
            .. formula.Shape is null ? Array.Empty<string>() : ["height", "diameter"],
            .. WarmsSomething(formula) ? ["liquid_temperature"] : Array.Empty<string>(),
            .. formula.Formula.Lines.Select(line => line.Ingredient.Id).Distinct(),
        ];
    }

    /// <summary>Of a lesson: those of the class, and every formula's behind its id and a point.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<LessonFormula> formulas) =>
        [.. OfClass, .. formulas.SelectMany(formula => Of(formula).Select(name => $"{formula.Formula.Id}.{name}"))];

    /// <summary>True where something is warmed so that the mix comes to its temperature.</summary>
    private static bool WarmsSomething(LessonFormula formula) =>
        TapWater.IsDrawnFor(formula) || formula.Steps.SelectMany(step => step.Work.Heats).Any(heat => heat.Kind == HeatKind.Warmed);
}
