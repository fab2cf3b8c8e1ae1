using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Cards;

/// <summary>A part of an ingredient that a step takes before the rest of it: the water of a scald, the flour of a roux.</summary>
/// <param name="Step">The step's name.</param>
/// <param name="Ingredient">What.</param>
/// <param name="Weighed">How much, for one team; above 0.</param>
/// <param name="Resolution">The division of the scale that it is weighed on.</param>
/// <param name="Share">How much that is of the ingredient; above 0 and below 1.</param>
public sealed record ApartLine(string Step, Ingredient Ingredient, Mass Weighed, Mass Resolution, double Share)
{
    /// <summary>Those of a method, in its order.</summary>
    internal static IEnumerable<ApartLine> Of(LessonFormula bread, IReadOnlyList<CardLine> lines) =>
        from step in bread.Steps
        from heat in step.Work.Heats.Where(heat => heat.IsOfAPart)
        let whole = lines.FirstOrDefault(line => line.Line.Ingredient.Id == heat.Ingredient.Id)
        where whole is not null
        select new ApartLine(
            step.Name,
            heat.Ingredient,
            Shown(whole.Line.Weighed * heat.Share, whole.Line.Resolution),
            whole.Line.Resolution,
            heat.Share
        );

    private static Mass Shown(Mass mass, Mass resolution) =>
        resolution * Math.Round(mass.Grams / resolution.Grams, MidpointRounding.AwayFromZero);
}
