using ClassKit.Baking.Altitude;
using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Altitude;

public sealed class HighCookingTests
{
    private const double FiveThousandFeet = 1524;

    /// <summary>
    /// University of Wyoming Extension, B-734, "Adjusting deep fat frying temperatures": 3 °F for each 1,000 ft; doughnuts at 370 °F are
    /// fried at 355 °F at 5,000 ft.
    /// </summary>
    [Theory]
    [InlineData(370, 5000, 355)]
    [InlineData(356, 7000, 335)]
    [InlineData(370, 2900, 370)]
    public void Fat_is_three_degrees_Fahrenheit_cooler_for_each_thousand_feet(double atSeaLevel, double feet, double here) =>
        Assert.Equal(here, HighCooking.FatAt(Temperature.FromFahrenheit(atSeaLevel), feet * 0.3048).Fahrenheit, 4.51); // set to 5 °C

    [Theory]
    [InlineData(CookingWay.Fryer, "fat-cooler")]
    [InlineData(CookingWay.Steamer, "steam-cooler")]
    [InlineData(CookingWay.BoilingWater, "steam-cooler")]
    [InlineData(CookingWay.Pan, null)]
    [InlineData(CookingWay.Griddle, null)]
    [InlineData(CookingWay.Flame, null)]
    [InlineData(CookingWay.Microwave, null)]
    public void What_is_cooked_otherwise_than_in_an_oven_keeps_its_formula_and_minds_its_heat(CookingWay way, string? code)
    {
        var changed = In(Doughs.Muffins, way);

        Assert.Empty(changed.Lines);
        Assert.Null(changed.OvenWarmer);
        Assert.Equal(code is null ? ["cakes-first"] : [code, "cakes-first"], changed.Advice.Select(advice => advice.Code));
        Assert.All(changed.Advice, advice => Assert.DoesNotContain("bake it", advice.Message, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void What_an_oven_bakes_as_well_keeps_its_table() =>
        Assert.NotEmpty(
            AltitudeFormula
                .For(
                    Doughs.Muffins,
                    FiveThousandFeet,
                    heats: [new(CookingWay.BoilingWater, null), new(CookingWay.Oven, Temperature.FromCelsius(200))]
                )
                .Value.Lines
        );

    /// <summary>A shell has to dry before it stands; a pocket falls again whatever dries. Common practice, no source.</summary>
    [Theory]
    [InlineData(CookingWay.Oven, null, true)]
    [InlineData(CookingWay.Oven, CrumbStructure.Pocket, false)]
    [InlineData(CookingWay.Pan, CrumbStructure.Pocket, false)]
    [InlineData(CookingWay.Griddle, null, false)]
    public void Only_a_shell_from_an_oven_bakes_longer_for_it(CookingWay way, CrumbStructure? structure, bool isShell)
    {
        var advice = Assert.Single(In(Doughs.Popovers, way, structure).Advice);

        Assert.Equal(isShell, advice.Message.Contains("bake longer", StringComparison.Ordinal));
        Assert.Equal(isShell, advice.Message.Contains("shell", StringComparison.Ordinal));
    }

    [Fact]
    public void A_dough_of_a_starter_is_up_sooner_as_one_of_yeast_is()
    {
        var sourdough = Doughs.Of("sourdough", Leavening.Yeast, ("bread_flour", 80), ("water", 50), ("salt", 2));
        sourdough = sourdough with { Lines = [.. sourdough.Lines, new(Pantry.Shipped.Called("Sourdough starter, 100 %").Single(), 40)] };
        var advice = Assert.Single(AltitudeFormula.For(sourdough, FiveThousandFeet).Value.Advice);

        Assert.Equal("rises-sooner", advice.Code);
        Assert.DoesNotContain("less yeast", advice.Message, StringComparison.Ordinal);
    }

    private static AltitudeFormula In(BakersFormula formula, CookingWay way, CrumbStructure? structure = null) =>
        AltitudeFormula
            .For(
                formula,
                FiveThousandFeet,
                heats: [new(way, way == CookingWay.Fryer ? Temperature.FromCelsius(180) : null)],
                structure: structure
            )
            .Value;
}
