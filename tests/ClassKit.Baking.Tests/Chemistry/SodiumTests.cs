using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Chemistry;

public sealed class SodiumTests
{
    [Fact]
    public void Salt_and_soda_bring_what_the_usda_measured()
    {
        // USDA SR28: 38 758 mg and 27 360 mg in 100 g. 2 g of salt and 0.5 g of soda in the dough of 100 g of flour: 0.7752 + 0.1368 g
        var formula = Doughs.Of("soda_bread", Leavening.Chemical, ("ap_flour", 100), ("buttermilk", 70), ("salt", 2), ("baking_soda", 0.5));
        Assert.Equal(0.9120, Sodium.In(formula, Mass.FromGrams(172.5)).Value.Grams, 0.00005);
    }

    [Fact]
    public void Table_salt_is_not_quite_pure() => Assert.InRange(IngredientCatalog.Get("salt").SodiumShare!.Value, 0.95 * 0.39339, 0.39339); // NaCl: 22.990 / 58.440
}
