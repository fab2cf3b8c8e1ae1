using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Formulas;

/// <summary>How wet a baker's formula is, in the two ways that are in use.</summary>
public static class DoughWater
{
    /// <summary>
    /// Liquids in percent of the flour, counted whole, a starter's water with them: the baker's hydration, in which 100 g of milk are 100
    /// g.
    /// </summary>
    public static double AddedLiquidPercent(BakersFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return formula.Lines.Sum(line =>
            line.Ingredient switch
            {
                { Role: IngredientRole.Liquid } => line.Percent,
                { StarterOf: not null } starter => line.Percent * (1 - starter.StarterFlourShare),
                _ => 0,
            }
        );
    }

    /// <summary>
    /// The water that is added to the flour, in percent of it: the water of liquids, eggs, butter, sugar syrups and the rest, but not the
    /// flour's own.
    /// </summary>
    /// <remarks>With 500 g of flour and 300 g of plain yogurt 263.7 g of water are added: 52.74 %.</remarks>
    public static double EffectivePercent(BakersFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return formula
            .Lines.Where(line => line.Ingredient.Role != IngredientRole.Flour)
            .Sum(line =>
                line.Percent * (line.Ingredient.StarterOf is null ? line.Ingredient.WaterShare : 1 - line.Ingredient.StarterFlourShare)
            );
    }

    /// <summary>All water, the flour's own too, in percent of the flour.</summary>
    public static double AllWaterPercent(BakersFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return formula.Lines.Sum(line => line.Percent * line.Ingredient.WaterShare);
    }

    /// <summary>All water as a share of the whole dough, 0 to 1: the total moisture. 0 for a formula with nothing in it.</summary>
    public static double MoistureShare(BakersFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var total = formula.TotalPercent;
        return total > 0 ? AllWaterPercent(formula) / total : 0;
    }

    /// <summary>All water in a mass of the dough.</summary>
    /// <param name="formula">Of the dough.</param>
    /// <param name="dough">How much of it.</param>
    public static Mass In(BakersFormula formula, Mass dough) => dough * MoistureShare(formula);
}
