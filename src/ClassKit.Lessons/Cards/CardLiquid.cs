using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>The liquid that brings a yeast dough to its temperature in this kitchen.</summary>
/// <param name="Ingredient">Which liquid: the one there is most of.</param>
/// <param name="Answer">How warm, or why no liquid can do it: then the flour has to be warmed or cooled.</param>
public sealed record CardLiquid(Ingredient Ingredient, Computed<LiquidTemperature> Answer)
{
    /// <summary>Null where there is no yeast to care for, or no liquid.</summary>
    internal static CardLiquid? For(LessonFormula formula, ClassProfile profile, PackSettings settings)
    {
        var lines = formula.Formula.Lines;
        var liquid = lines.Where(line => line.Ingredient.Role == IngredientRole.Liquid).MaxBy(line => line.Percent)?.Ingredient;
        if (liquid is null || lines.All(line => line.Ingredient.Role != IngredientRole.Yeast))
            return null;
        TemperatureFactor[] others = [new("flour", profile.KitchenTemperature), new("room", profile.KitchenTemperature)];
        return new(liquid, DoughTemperature.LiquidFor(formula.MixTemperature, others, settings.HandFriction));
    }
}
