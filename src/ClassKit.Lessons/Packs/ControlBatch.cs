using ClassKit.Baking.Batches;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Weighing;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Packs;

/// <summary>A bread without what leavens it, to hold the bread against: whatever it lacks in height is what the leavening did.</summary>
internal static class ControlBatch
{
    /// <summary>The demonstration with its control weighed out, a portion for a spare cup of each team's tin; as it is where it makes none.</summary>
    public static Computed<LessonDemonstration> WeighedFor(LessonDemonstration shown, Lesson lesson, ClassProfile profile)
    {
        if (shown.ControlOf is not { } id || lesson.Formulas.FirstOrDefault(formula => formula.Formula.Id == id) is not { } bread)
            return shown;
        return Scaling.FromPieces(Unleavened(bread.Formula), profile.Teams, bread.PieceMass, DoughLoss.Of(bread.LossPercent), new Scales(profile.ScaleResolution, profile.SmallScaleResolution))
            .Then<LessonDemonstration>(batch => shown with { Ingredients = [.. shown.Ingredients, .. batch.Lines.Select(line => new WeighedIngredient(line.Ingredient, line.Weighed))] });
    }

    /// <summary>Everything but soda, powder and yeast, in the same proportions.</summary>
    private static BakersFormula Unleavened(BakersFormula formula) =>
        formula with { Lines = [.. formula.Lines.Where(line => line.Ingredient.Role is not (IngredientRole.ChemicalLeavening or IngredientRole.Yeast))] };
}
