using ClassKit.Baking.Batches;
using ClassKit.Baking.Costing;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.PracticeBank.Tests.Oracles;

internal static class ScalingOracle
{
    public static readonly Dictionary<string, Oracle> Exercises = new()
    {
        ["tray_of_rolls"] = given =>
        {
            var formula = Doughs.Of(
                ("bread_flour", 100), ("whole_milk", given.Percent("milk_percent")), ("unsalted_butter", given.Percent("butter_percent")),
                ("salt", given.Percent("salt_percent")), ("instant_yeast", given.Percent("yeast_percent")));
            var batch = Scaling.FromPieces(formula, (int)given["pieces"], given.Grams("piece"), DoughLoss.None, Scales.Common).Value;
            return [new("dough", batch.Exact.Grams), new("total_percent", formula.TotalPercent / 100), new("flour", batch.Flour.Grams), new("milk", batch.GramsOf("whole_milk"))];
        },
        ["bigger_portions"] = given =>
        {
            var factor = PortionFactor.Of(given["portions"], given.Grams("size"), given["wanted"], given.Grams("wanted_size")).Value;
            return
            [
                new("card_yield", (given.Grams("size") * given["portions"]).Grams),
                new("wanted_yield", (given.Grams("size") * given["portions"] * factor).Grams),
                new("factor", factor),
                new("flour", (given.Grams("card_flour") * factor).Grams),
            ];
        },
        ["loaf_for_the_shelf"] = given =>
        {
            var loaves = given.Grams("baked") * given["loaves"];
            return
            [
                new("piece", DoughLoss.Of(given.Percent("bake_loss")).DoughFor(given.Grams("baked")).Value.Grams),
                new("dough", DoughLoss.Compounded(given.Percent("bowl_loss"), given.Percent("bake_loss")).DoughFor(loaves).Value.Grams),
            ];
        },
        ["last_of_the_butter"] = given =>
        {
            // All that is neither flour nor butter is written as water: only the total counts.
            var formula = Doughs.Of(
                ("bread_flour", 100), ("unsalted_butter", given.Percent("butter_percent")), ("water", given.Percent("total_percent") - 100 - given.Percent("butter_percent")));
            var batch = Scaling.FromIngredient(formula, IngredientCatalog.Get("unsalted_butter"), given.Grams("butter"), Scales.Common).Value;
            return [new("flour", batch.Flour.Grams), new("dough", batch.Exact.Grams), new("buns", Math.Floor(batch.Exact / given.Grams("piece")))];
        },
        ["mixer_batches"] = given =>
        {
            var formula = Doughs.Of(("bread_flour", 100), ("water", given.Percent("total_percent") - 100));
            var all = Scaling.FromPieces(formula, (int)given["pieces"], given.Grams("piece"), DoughLoss.Of(given.Percent("loss")), Scales.Common).Value;
            var bowl = MixerBowl.Divide(all.Exact, Mass.FromKilograms(given["bowl"])).Value;
            return [new("batches", bowl.Batches), new("flour", Scaling.FromDough(formula, bowl.Each, Scales.Common).Value.Flour.Grams)];
        },
    };
}
