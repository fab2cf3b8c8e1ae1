using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Foresight;

namespace ClassKit.DemoCohort;

/// <summary>
/// Wrong methods that the demo lesson's exercises do not list and that some of the invented students share, or have alone.
/// </summary>
public static class OwnMethods
{
    private static readonly IReadOnlyDictionary<string, string[]> Formulas = new Dictionary<string, string[]>
    {
        // The rule of thumb for a weather report, and the same half corrected.
        ["oven_dial.oven_c"] = ["=(oven_f-30)/2", "=(oven_f-30)/1.8"],
        ["yeast.extra_water"] = ["=fresh-active_dry"],
        ["steam.batter_water"] = ["=pieces*batter*(1-water_share)"],
        // How wet the liquid is, which is no step or two from how wet the batter is.
        ["hydration.all_water"] = ["=(milk*milk_water+egg*egg_water)/(milk+egg)"],
    };

    /// <summary>Those of an exercise, in the order in which <see cref="DemoClass"/> counts them.</summary>
    public static IReadOnlyList<ForeseenTurn> Of(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return
        [
            .. exercise.Parts.SelectMany(part =>
                Formulas
                    .GetValueOrDefault($"{exercise.Id}.{part.Id}", [])
                    .Select(formula => new ForeseenTurn(exercise, part, CellFormula.Of(formula), [], 0, 1))
            ),
        ];
    }
}
