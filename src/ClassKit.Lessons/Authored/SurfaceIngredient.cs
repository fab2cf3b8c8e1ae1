using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>What touches a bread and is in no baker's formula: fat for the tin, flour for the board, egg for the top, a filling.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="Amount">How much for each; above 0.</param>
/// <param name="Each">For each what.</param>
/// <param name="For">What it is for: <c>brushing the cups</c>.</param>
public sealed record SurfaceIngredient(Ingredient Ingredient, Mass Amount, SurfaceShare Each, TextTemplate For)
{
    /// <summary>True of what is inside a piece and no part of its dough: it is weighed, bought and declared, and holds no gas.</summary>
    public bool IsFilling { get; init; }

    /// <summary>How much a team takes.</summary>
    /// <param name="formula">The bread; its equipment says how many tins there are.</param>
    /// <param name="pieces">How many pieces the team makes.</param>
    public Mass ForTeam(LessonFormula formula, int pieces)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var times = Each switch
        {
            SurfaceShare.Piece => pieces,
            SurfaceShare.Tin => formula.Tins,
            _ => 1,
        };
        return Mass.FromGrams((double)((decimal)Amount.Grams * times));
    }
}
