using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.HeatBalances;

public sealed class HeatBalanceTests
{
    /// <summary>Method of mixtures as every textbook of physics has it: 1 kg of water at 80 °C and 3 kg at 20 °C come to 35 °C.</summary>
    [Fact]
    public void Water_in_water_comes_to_the_mean_by_mass()
    {
        var mixed = HeatBalance.Mixed([Water(1000, 80), Water(3000, 20)]);
        Assert.Equal(35, mixed.Value.Celsius, 1e-9);
    }

    /// <summary>
    /// By hand with the measured heats of Geankoplis A.4-1 and, of egg, ASHRAE: muffins of 100 flour (1.84) and 18 sugar (1.3) at 22 °C, 95
    /// buttermilk (3.9) and 20 egg (3.6) at 4 °C, 22 melted butter (2.3) at 40 °C: (184 × 22 + 23 × 22 + 371 × 4 + 72 × 4 + 51 × 40) / 701
    /// = 11.9 °C. The master baker's hand came to 12 °C and 13 °C.
    /// </summary>
    [Fact]
    public void Muffins_of_cold_buttermilk_and_egg_are_nowhere_near_twenty_degrees()
    {
        var mixed = HeatBalance.Mixed([
            Part("ap_flour", 100, 22),
            Part("sugar", 18, 22),
            Part("buttermilk", 95, 4),
            Part("whole_egg", 20, 4),
            Part("unsalted_butter", 22, 40),
        ]);
        Assert.Equal(11.9, mixed.Value.Celsius, 0.7);
    }

    [Fact]
    public void The_part_asked_for_gives_the_mix_asked_for() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[0, 40], Gen.Double[1, 500], Gen.Double[15, 30])
            .Sample(
                (flour, room, milk, wanted) =>
                {
                    HeatPart[] others = [Part("ap_flour", flour, room), Part("whole_egg", 20, 4)];
                    var heat = milk * SpecificHeat.Of(IngredientCatalog.Get("whole_milk"));
                    if (HeatBalance.PartFor(Temperature.FromCelsius(wanted), others, heat).TryGet(out var warm, out _))
                        Assert.Equal(wanted, HeatBalance.Mixed([.. others, new("milk", heat, warm)]).Value.Celsius, 1e-6);
                }
            );

    [Fact]
    public void What_no_kitchen_can_do_is_said()
    {
        Assert.Equal("nothing-to-mix", HeatBalance.Mixed([]).Why!.Code);
        Assert.Equal("heat-out-of-range", HeatBalance.Mixed([Water(0, 20)]).Why!.Code);
        Assert.Equal("temperature-out-of-range", HeatBalance.Mixed([Water(100, 120)]).Why!.Code);
        Assert.Equal("mix-out-of-reach", HeatBalance.PartFor(Temperature.FromCelsius(60), [Water(1000, 4)], 100).Why!.Code);
    }

    private static HeatPart Water(double grams, double celsius) => Part("water", grams, celsius);

    private static HeatPart Part(string id, double grams, double celsius) =>
        HeatPart.Of(IngredientCatalog.Get(id), Mass.FromGrams(grams), Temperature.FromCelsius(celsius));
}
