using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.DoughProperties;

/// <summary>The room that a dough takes before there is any gas in it.</summary>
/// <remarks>
/// The volumes of water, fat and everything else added up: 0.998, 0.92 and 1.5 g/mL (water: steam tables at 20 °C; fat: 218 g of oil in a
/// US cup, USDA SR28; the rest from memory, good to some 3 %). The dough of 100 g of flour comes to some 140 mL; the baking literature
/// gives 145 mL as mixed, with a little air in it.
/// </remarks>
public static class DoughVolume
{
    private const double WaterGramsPerMillilitre = 0.998;
    private const double FatGramsPerMillilitre = 0.92;
    private const double SolidsGramsPerMillilitre = 1.5;

    /// <summary>Of a mass of dough, without air.</summary>
    /// <param name="formula">Of the dough; 0 L if there is nothing in it.</param>
    /// <param name="dough">How much of it.</param>
    public static Volume GasFree(BakersFormula formula, Mass dough)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var total = formula.TotalPercent;
        if (!(total > 0))
            return default;
        var millilitresPer100Flour = formula.Lines.Sum(line =>
        {
            var water = line.Percent * line.Ingredient.WaterShare;
            var dry = line.Percent - water;
            return water / WaterGramsPerMillilitre
                + dry / (line.Ingredient.Role == IngredientRole.Fat ? FatGramsPerMillilitre : SolidsGramsPerMillilitre);
        });
        return Volume.FromMillilitres(millilitresPer100Flour / total * dough.Grams);
    }
}
