using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.HeatBalances;

/// <summary>How much heat it takes to warm an ingredient, from what it is made of.</summary>
/// <remarks>
/// Each constituent by its own: Y. Choi, M. R. Okos, Effects of temperature and composition on the thermal properties of foods (1986), in
/// ASHRAE Handbook, Refrigeration (2006), chapter 9, table 1, here at 20 °C. Fat that melts or sets takes or gives heat besides, which is
/// left out: with a fifth of butter in a batter less than 1 K.
/// </remarks>
public static class SpecificHeat
{
    private const double Water = 4.1766;
    private const double Protein = 2.0319;
    private const double Fat = 2.0117;
    private const double Carbohydrate = 1.5857;
    private const double Ash = 1.1289;

    /// <summary>In joules for a gram and a kelvin, between freezing and boiling; some 5 % off what is measured.</summary>
    public static double Of(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        var solids = ingredient.Solids ?? FoodSolids.Unknown(ingredient.WaterShare);
        return ingredient.WaterShare * Water
            + PerHundred.Share(solids.Protein * Protein + solids.Fat * Fat + solids.Carbohydrate * Carbohydrate + solids.Ash * Ash);
    }
}
