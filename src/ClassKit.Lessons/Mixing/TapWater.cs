using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Mixing;

/// <summary>Water is drawn as warm or as cold as a dough asks for it: nobody has to write that into a step.</summary>
/// <remarks>
/// So it is with every dough of flour and water; J. Hamelman, Bread, 2nd edition, 2013, "Desired dough temperature": water is the one
/// ingredient whose temperature a baker can set. From memory.
/// </remarks>
public static class TapWater
{
    private const string Id = "water";

    /// <summary>The water of a pantry: the one that ships, or the kitchen's own in its place.</summary>
    public static Ingredient In(Pantry pantry)
    {
        ArgumentNullException.ThrowIfNull(pantry);
        return pantry.TryFind(Id, out var water) ? water : throw new KeyNotFoundException(Id);
    }

    /// <summary>True for water itself, which comes from a tap and not from a refrigerator.</summary>
    public static bool Is(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.Id == Id;
    }

    /// <summary>
    /// True where the water of a formula is drawn at what its mix temperature asks for: where it has some, no step warms anything for that,
    /// and none cooks or boils all of it.
    /// </summary>
    public static bool IsDrawnFor(LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return formula.MixTemperature is not null
            && formula.Formula.Lines.Any(line => Is(line.Ingredient))
            && formula.Steps.All(step =>
                step.Work.Heats.All(heat =>
                    heat.Kind != HeatKind.Warmed && !(Is(heat.Ingredient) && !heat.IsOfAPart && Scald.IsHot(formula, heat))
                )
            );
    }
}
