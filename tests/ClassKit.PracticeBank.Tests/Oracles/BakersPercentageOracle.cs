using ClassKit.Baking.Batches;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Preferments;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.PracticeBank.Tests.Oracles;

internal static class BakersPercentageOracle
{
    public static readonly Dictionary<string, Oracle> Exercises = new()
    {
        ["pan_loaf"] = given =>
        {
            var formula = Doughs.Of(
                ("bread_flour", 100),
                ("water", given.Percent("water_percent")),
                ("salt", given.Percent("salt_percent")),
                ("instant_yeast", given.Percent("yeast_percent"))
            );
            var batch = Scaling.FromFlour(formula, given.Grams("flour"), Scales.Common).Value;
            return
            [
                new("water", batch.GramsOf("water")),
                new("salt", batch.GramsOf("salt")),
                new("yeast", batch.GramsOf("instant_yeast")),
                new("dough", batch.Exact.Grams),
            ];
        },
        ["handwritten_recipe"] = given =>
        {
            var formula = Doughs.FromWeights(
                Doughs.Weighed("ap_flour", given["flour"]),
                Doughs.Weighed("water", given["water"]),
                Doughs.Weighed("olive_oil", given["oil"]),
                Doughs.Weighed("salt", given["salt"])
            );
            return
            [
                new("water_percent", formula.ShareOf("water")),
                new("salt_percent", formula.ShareOf("salt")),
                new("new_water", Scaling.FromFlour(formula, given.Grams("new_flour"), Scales.Common).Value.GramsOf("water")),
            ];
        },
        ["two_flours"] = given =>
        {
            var flour = given["bread_flour"] + given["wholemeal"];
            var formula = Doughs.FromWeights(
                Doughs.Weighed("bread_flour", given["bread_flour"]),
                Doughs.Weighed("whole_wheat_flour", given["wholemeal"]),
                Doughs.Weighed("seeds", given["seeds"]),
                Doughs.Weighed("water", given["water"]),
                Doughs.Weighed("salt", flour * given["salt_percent"])
            );
            return
            [
                new("wholemeal_percent", formula.ShareOf("whole_wheat_flour")),
                new("hydration", formula.ShareOf("water")),
                new("salt", Scaling.FromFlour(formula, Mass.FromGrams(flour), Scales.Common).Value.GramsOf("salt")),
            ];
        },
        ["poolish_split"] = given =>
        {
            var total = Doughs.Of(("bread_flour", 100), ("water", given.Percent("water_percent")), ("salt", given.Percent("salt_percent")));
            var poolish = SubMix.FromOwnPercentages(
                "Poolish",
                given.Percent("prefermented"),
                Doughs.Of(("bread_flour", 100), ("water", 100)).Lines
            );
            var sheet = FormulaSheet.For(total, [poolish], given.Grams("flour")).Value;
            return
            [
                new("poolish_flour", Row("bread_flour").InSubMixes[0].Grams),
                new("final_flour", Row("bread_flour").Final.Grams),
                new("final_water", Row("water").Final.Grams),
                new("salt", Row("salt").Final.Grams),
            ];
            SheetRow Row(string ingredient) => sheet.Rows.Single(row => row.Ingredient.Id == ingredient);
        },
        ["poolish_card"] = given =>
        {
            var half = given["poolish"] / 2;
            WeighedIngredient[] poolish = [Doughs.Weighed("bread_flour", half), Doughs.Weighed("water", half)];
            WeighedIngredient[] final =
            [
                Doughs.Weighed("bread_flour", given["final_flour"]),
                Doughs.Weighed("water", given["final_water"]),
                Doughs.Weighed("salt", given["salt"]),
            ];
            var overall = FormulaSheet.Overall("dough", "Dough", Leavening.Yeast, final, poolish).Value;
            var ahead = SubMix.FromOwnPercentages("Poolish", 100 * half / (half + given["final_flour"]), Doughs.FromWeights(poolish).Lines);
            var sheet = FormulaSheet.For(overall, [ahead], Mass.FromGrams(half + given["final_flour"])).Value;
            return [new("hydration", overall.ShareOf("water")), new("prefermented", sheet.PrefermentedFlourPercent / 100)];
        },
        ["starter_build"] = given =>
        {
            var ripe = given.Grams("levain") + given.Grams("kept");
            var feeding = Doughs.Of(
                ("bread_flour", 100),
                ("water", 100 * given["water_parts"] / given["flour_parts"]),
                ("starter", 100 / given["flour_parts"])
            );
            var batch = Scaling.FromDough(feeding, ripe, Scales.Common).Value;
            return
            [
                new("ripe", ripe.Grams),
                new("one_part", batch.GramsOf("starter")),
                new("flour", batch.Flour.Grams),
                new("water", batch.GramsOf("water")),
            ];
        },
        ["without_the_egg"] = given =>
        {
            var before = Doughs.FromWeights(
                Doughs.Weighed("ap_flour", given["flour"]),
                Doughs.Weighed("whole_milk", given["milk"]),
                Doughs.Weighed("whole_egg", given["egg"])
            );
            // The problem's text rounds 76.15 % and 88.13 % to a tenth.
            const double rounding = 1e-3;
            var wetness = DoughWater.EffectivePercent(before) / 100;
            var water = given["flour"] * wetness - (given.Grams("milk") * IngredientCatalog.Get("whole_milk").WaterShare).Grams;
            return [new("water", water, rounding), new("wetness", wetness, rounding), new("lighter", given["egg"] - water, 4 * rounding)];
        },
        ["without_the_milk"] = given =>
        {
            var before = Doughs.FromWeights(
                Doughs.Weighed("bread_flour", given["flour"]),
                Doughs.Weighed("whole_milk", given["milk"]),
                Doughs.Weighed("unsalted_butter", given["butter"])
            );
            // Shares of fat are the problem's; Baking knows those of water, which the text rounds to a tenth of a per cent.
            var fat = given.Grams("milk") * given["milk_fat"] + given.Grams("butter") * given["butter_fat"];
            return [new("water_percent", DoughWater.EffectivePercent(before) / 100, 1e-3), new("oil", fat.Grams)];
        },
        ["the_wrong_jug"] = given =>
        {
            var salt = given["flour"] * given["salt_percent"];
            var mixed = Doughs.FromWeights(
                Doughs.Weighed("bread_flour", given["flour"]),
                Doughs.Weighed("water", given["dough"] - given["flour"] - salt),
                Doughs.Weighed("salt", salt)
            );
            var water = Mass.FromGrams(Scaling.FromFlour(mixed, given.Grams("flour"), Scales.Common).Value.GramsOf("water"));
            var card = Doughs.Of(("bread_flour", 100), ("water", given.Percent("water_percent")));
            var right = Scaling.FromIngredient(card, IngredientCatalog.Get("water"), water, Scales.Common).Value;
            return [new("hydration", mixed.ShareOf("water")), new("more_flour", (right.Flour - given.Grams("flour")).Grams, 1e-7)];
        },
    };
}
