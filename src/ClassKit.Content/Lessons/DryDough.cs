using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.Lessons;

/// <summary>Notes formulas from which the liquid was most likely left out, or its point slipped.</summary>
internal static class DryDough
{
    /// <summary>
    /// In percent of the flour, without the flour's own. From memory: shortbread, the driest of doughs, has some 10 of its butter alone;
    /// crackers 30, breads 50 and more.
    /// </summary>
    private const double Least = 10;

    public static void Note(IReadOnlyList<FormulaLine> lines, int line, ProblemList problems)
    {
        var water = lines
            .Where(each => each.Ingredient.Role != IngredientRole.Flour)
            .Sum(each => each.Percent * each.Ingredient.WaterShare);
        if (water < Least)
            problems.Doubt(
                line,
                FormattableString.Invariant($"All that goes into the flour brings {water:0.#} % of water"),
                "Is a liquid missing, or did its point slip? Doughs of bread hold 50 % and more. Leave it if it is meant."
            );
    }
}
