using ClassKit.Baking.Batches;
using ClassKit.Baking.Formulas;
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
            var formula = Doughs.Of(("bread_flour", 100), ("water", given.Percent("water_percent")), ("salt", given.Percent("salt_percent")), ("instant_yeast", given.Percent("yeast_percent")));
            var batch = Scaling.FromFlour(formula, given.Grams("flour"), Scales.Common).Value;
            return [new("water", batch.GramsOf("water")), new("salt", batch.GramsOf("salt")), new("yeast", batch.GramsOf("instant_yeast")), new("dough", batch.Exact.Grams)];
        },
        ["handwritten_recipe"] = given =>
        {
            var formula = Doughs.FromWeights(
                Doughs.Weighed("ap_flour", given["flour"]), Doughs.Weighed("water", given["water"]), Doughs.Weighed("olive_oil", given["oil"]), Doughs.Weighed("salt", given["salt"]));
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
                Doughs.Weighed("bread_flour", given["bread_flour"]), Doughs.Weighed("whole_wheat_flour", given["wholemeal"]), Doughs.Weighed("seeds", given["seeds"]),
                Doughs.Weighed("water", given["water"]), Doughs.Weighed("salt", flour * given["salt_percent"]));
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
            var poolish = SubMix.FromOwnPercentages("Poolish", given.Percent("prefermented"), Doughs.Of(("bread_flour", 100), ("water", 100)).Lines);
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
            WeighedIngredient[] final = [Doughs.Weighed("bread_flour", given["final_flour"]), Doughs.Weighed("water", given["final_water"]), Doughs.Weighed("salt", given["salt"])];
            var overall = FormulaSheet.Overall("dough", "Dough", Leavening.Yeast, final, poolish).Value;
            var ahead = SubMix.FromOwnPercentages("Poolish", 100 * half / (half + given["final_flour"]), Doughs.FromWeights(poolish).Lines);
            var sheet = FormulaSheet.For(overall, [ahead], Mass.FromGrams(half + given["final_flour"])).Value;
            return [new("hydration", overall.ShareOf("water")), new("prefermented", sheet.PrefermentedFlourPercent / 100)];
        },
    };
}
