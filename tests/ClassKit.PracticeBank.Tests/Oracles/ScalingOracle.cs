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
                ("bread_flour", 100),
                ("whole_milk", given.Percent("milk_percent")),
                ("unsalted_butter", given.Percent("butter_percent")),
                ("salt", given.Percent("salt_percent")),
                ("instant_yeast", given.Percent("yeast_percent"))
            );
            var batch = Scaling.FromPieces(formula, (int)given["pieces"], given.Grams("piece"), DoughLoss.None, Scales.Common).Value;
            return
            [
                new("dough", batch.Exact.Grams),
                new("total_percent", formula.TotalPercent / 100),
                new("flour", batch.Flour.Grams),
                new("milk", batch.GramsOf("whole_milk")),
            ];
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
                ("bread_flour", 100),
                ("unsalted_butter", given.Percent("butter_percent")),
                ("water", given.Percent("total_percent") - 100 - given.Percent("butter_percent"))
            );
            var batch = Scaling
                .FromIngredient(formula, IngredientCatalog.Get("unsalted_butter"), given.Grams("butter"), Scales.Common)
                .Value;
            return
            [
                new("flour", batch.Flour.Grams),
                new("dough", batch.Exact.Grams),
                new("buns", Math.Floor(batch.Exact / given.Grams("piece"))),
            ];
        },
        ["mixer_batches"] = given =>
        {
            var formula = Doughs.Of(("bread_flour", 100), ("water", given.Percent("total_percent") - 100));
            var all = Scaling
                .FromPieces(formula, (int)given["pieces"], given.Grams("piece"), DoughLoss.Of(given.Percent("loss")), Scales.Common)
                .Value;
            var bowl = MixerBowl.Divide(all.Exact, Mass.FromKilograms(given["bowl"])).Value;
            return [new("batches", bowl.Batches), new("flour", Scaling.FromDough(formula, bowl.Each, Scales.Common).Value.Flour.Grams)];
        },
        ["loaf_by_displacement"] = given =>
        {
            var volume = Volume.FromMillilitres(given["box"]) - Volume.FromMillilitres(given["around"]);
            var baked = YieldTest.Of(given.Grams("dough"), given.Grams("loaf")).Value;
            return
            [
                new("volume", volume.Millilitres),
                new("lightness", volume.Millilitres / given.Grams("loaf").Grams),
                new("bake_loss", 1 - baked.Share),
            ];
        },
        ["day_old_portions"] = given =>
        {
            var kept = DoughLoss.Compounded([.. Enumerable.Repeat(given.Percent("drying"), (int)given["days"])]);
            var loaf = given.Grams("loaf") * (1 - kept.TotalPercent / 100);
            var cut = YieldTest.FromTrim(loaf, loaf * given["heels"]).Value;
            var bread = cut.EdiblePortion * given["loaves"];
            return
            [
                new("dry_loaf", loaf.Grams),
                new("bread", bread.Grams),
                new("portions", Math.Floor(bread / given.Grams("portion"))),
                new("crumbs", (loaf * given["loaves"] - bread).Grams),
            ];
        },
        ["the_wrong_factor"] = given =>
        {
            var used = PortionFactor.Of(1, given.Grams("card_dough"), 1, given.Grams("found")).Value;
            var right = PortionFactor.Of(1, given.Grams("card_dough"), given["wanted"], given.Grams("piece")).Value;
            var card = Doughs.Of(("bread_flour", 100), ("water", 100 * (given["card_dough"] / given["card_flour"] - 1)));
            var missing = given.Grams("piece") * given["wanted"] - given.Grams("found");
            return
            [
                new("used", used),
                new("right", right),
                new("flour", Scaling.FromDough(card, missing, Scales.Common).Value.Flour.Grams),
            ];
        },
    };
}
