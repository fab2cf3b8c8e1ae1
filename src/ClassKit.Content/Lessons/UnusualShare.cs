using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.Lessons;

/// <summary>Notes shares of a formula in which most likely the point slipped: ten times too much of what is weighed by the gram.</summary>
internal static class UnusualShare
{
    /// <summary>
    /// The most that is usual, in percent of the flour. From memory, generously: salt 1 to 3, fresh yeast 2 to 8, powder and soda together
    /// 3 to 8.
    /// </summary>
    private static readonly Dictionary<IngredientRole, double> Most = new()
    {
        [IngredientRole.Salt] = 4.5,
        [IngredientRole.Yeast] = 12,
        [IngredientRole.ChemicalLeavening] = 12,
    };

    /// <summary>The same of dry yeasts, a third as much of which does as much as of fresh yeast. From memory: 0.5 to 3.</summary>
    private const double MostDryYeast = 5;

    public static void Note(Ingredient ingredient, double percent, int line, ProblemList problems)
    {
        if (MostOf(ingredient) is { } most && percent > most)
            problems.Doubt(
                line,
                FormattableString.Invariant($"{ingredient.Name} is {percent} % of the flour, and more than {most} % is unusual"),
                FormattableString.Invariant($"Did the point slip: {percent / 10}? Leave it if it is meant.")
            );
    }

    private static double? MostOf(Ingredient ingredient) =>
        ingredient.Role == IngredientRole.Yeast && ingredient.Id != "fresh_yeast" ? MostDryYeast
        : Most.TryGetValue(ingredient.Role, out var most) ? most
        : null;
}
