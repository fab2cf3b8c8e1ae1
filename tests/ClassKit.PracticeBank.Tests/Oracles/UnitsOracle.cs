using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.PracticeBank.Tests.Oracles;

internal static class UnitsOracle
{
    /// <summary>The problems' texts round an ounce to 28.35 g, a fluid ounce to 29.57 mL and a cup to 236.6 mL.</summary>
    private const double RoundedUnits = 3e-4;

    public static readonly Dictionary<string, Oracle> Exercises = new()
    {
        ["oven_and_fridge"] = given =>
            [
                new("oven_c", given.Fahrenheit("oven").Celsius),
                new("fridge_c", given.Fahrenheit("fridge").Celsius),
                new("rise_c", TemperatureDifference.FromFahrenheitDegrees(given["rise"]).Kelvins),
            ],
        ["pounds_and_ounces"] = given =>
        {
            var all = Mass.FromPounds(given["pounds"]) + Mass.FromOunces(given["ounces"]);
            return
            [
                new("all_ounces", all.Ounces),
                new("decimal_pounds", all.Pounds),
                new("grams", all.Grams, RoundedUnits),
                new("each_team", (all / given["teams"]).Grams, RoundedUnits),
            ];
        },
        ["cups_and_spoons"] = given =>
        {
            var flour = HouseholdMeasures.OfCups(IngredientCatalog.Get("ap_flour"), given["flour"])!.Value;
            var butter = HouseholdMeasures.OfTeaspoons(IngredientCatalog.Get("unsalted_butter"), 3 * given["butter"])!.Value;
            var powder = HouseholdMeasures.OfTeaspoons(IngredientCatalog.Get("baking_powder"), given["powder"])!.Value;
            var formula = Doughs.FromWeights(
                Doughs.Weighed("ap_flour", flour.Grams),
                Doughs.Weighed("unsalted_butter", butter.Grams),
                Doughs.Weighed("baking_powder", powder.Grams)
            );
            return
            [
                new("flour_grams", flour.Grams),
                new("butter_grams", butter.Grams),
                new("powder_percent", formula.ShareOf("baking_powder")),
            ];
        },
        ["fluid_ounces"] = given =>
        {
            var volume = MeasureDefinition.UnitedStates.FluidOunce * given["honey"];
            var honey = HouseholdMeasures.OfCups(IngredientCatalog.Get("honey"), volume / MeasureDefinition.UnitedStates.Cup)!.Value;
            return
            [
                new("volume", volume.Millilitres, RoundedUnits),
                new("mass", honey.Grams, RoundedUnits),
                new("mass_ounces", honey.Ounces, RoundedUnits),
            ];
        },
        ["dough_in_cups"] = given =>
        {
            var formula = Doughs.FromWeights(
                Doughs.Weighed("bread_flour", HouseholdMeasures.OfCups(IngredientCatalog.Get("bread_flour"), given["flour"])!.Value.Grams),
                Doughs.Weighed("water", HouseholdMeasures.OfCups(IngredientCatalog.Get("water"), given["water"])!.Value.Grams),
                Doughs.Weighed("salt", HouseholdMeasures.OfTeaspoons(IngredientCatalog.Get("salt"), given["salt"])!.Value.Grams)
            );
            return [new("hydration", formula.ShareOf("water")), new("salt_percent", formula.ShareOf("salt"))];
        },
    };
}
