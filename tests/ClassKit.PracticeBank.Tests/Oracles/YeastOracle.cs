using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Costing;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;
using ClassKit.Baking.Yeast;

namespace ClassKit.PracticeBank.Tests.Oracles;

internal static class YeastOracle
{
    public static readonly Dictionary<string, Oracle> Exercises = new()
    {
        ["packets_of_dry"] = given =>
        {
            var fresh = Scaling
                .FromFlour(
                    Doughs.Of(("bread_flour", 100), ("fresh_yeast", given.Percent("fresh_percent"))),
                    given.Grams("flour"),
                    Scales.Common
                )
                .Value.GramsOf("fresh_yeast");
            var factors = YeastFactors.CookBook with { ActiveDryPerFresh = given["dry_factor"] };
            var dry = factors.Convert(Mass.FromGrams(fresh), YeastKind.Fresh, YeastKind.ActiveDry).Value;
            var packet = new PurchaseUnit("packet", given.Grams("packet"), default);
            return [new("fresh", fresh), new("active_dry", dry.Grams), new("packets", packet.PacksFor(dry).Value)];
        },
        ["yeast_by_solids"] = given =>
        {
            var factors = YeastFactors.EqualSolids with { InstantPerFresh = given["fresh_solids"] / given["instant_solids"] };
            var instant = factors.Convert(given.Grams("fresh"), YeastKind.Fresh, YeastKind.Instant).Value;
            // Both yeasts hold the dry matter, so either share of either mass gives it.
            return
            [
                new("solids", instant.Grams * given["instant_solids"]),
                new("instant", instant.Grams),
                new("extra_water", (given.Grams("fresh") - instant).Grams),
            ];
        },
        ["warm_corner"] = given =>
        {
            var model = Model(given);
            var time = EquivalentSchedule.Minutes(given["minutes"], given.Celsius("usual"), given.Celsius("warm"), 1, model).Value.Typical;
            return
            [
                new("factor", model.RelativeRate(given.Celsius("warm")).Typical / model.RelativeRate(given.Celsius("usual")).Typical),
                new("time", time),
            ];
        },
        ["later_bake"] = given =>
        {
            // With the usual yeast the cool dough would take this long; it has more time, so it needs less yeast in proportion.
            var withUsualYeast = EquivalentSchedule
                .Minutes(given["minutes"], given.Celsius("usual"), given.Celsius("cool"), 1, Model(given))
                .Value.Typical;
            var formula = Doughs.Of(
                ("bread_flour", 100),
                ("instant_yeast", given.Percent("yeast_percent") * withUsualYeast / given["long_minutes"])
            );
            return [new("yeast", Scaling.FromFlour(formula, given.Grams("flour"), Scales.Common).Value.GramsOf("instant_yeast"))];
        },
        ["sugar_to_gas"] = given =>
        {
            // The problem's text rounds the share, the molar mass and the room of a mole.
            const double rounding = 2e-4;
            var gas = given.Grams("sugar") * Fermentation.CarbonDioxidePerHexose;
            return
            [
                new("gas", gas.Grams, rounding),
                new("moles", CarbonDioxide.AmountIn(gas).Moles, rounding),
                new("volume", CarbonDioxide.DryVolume(gas, given.Celsius("temperature"), Pressure.Standard).Value.Litres, rounding),
            ];
        },
        ["sweet_dough_slows"] = given =>
        {
            var model = YeastGasModel.Default with { SweetPercent = given.Percent("free"), SlowdownPerPercent = given["slower"] };
            var solids = Mass.FromGrams(1);
            var speed =
                model.MolesPerMinute(solids, Temperature.FromCelsius(27), given.Percent("sugar_percent")).Typical
                / model.MolesPerMinute(solids, Temperature.FromCelsius(27), 0).Typical;
            var lean = Scaling
                .FromFlour(
                    Doughs.Of(("bread_flour", 100), ("instant_yeast", given.Percent("yeast_percent"))),
                    given.Grams("flour"),
                    Scales.Common
                )
                .Value.GramsOf("instant_yeast");
            return [new("speed", speed), new("minutes", given["lean_minutes"] / speed), new("yeast", lean / speed)];
        },
        ["salt_in_the_water"] = given =>
        {
            // Sucrose gives two hexoses, of each two carbon dioxide: a quarter of its gas, in moles, is the moles of it.
            var sugar = CarbonDioxide.AmountIn(given.Grams("sugar") * Fermentation.CarbonDioxidePerDisaccharide).Moles / 4;
            // IUPAC: Na 22.990, Cl 35.45. Molar masses are rounded in the problem's text.
            const double salt = 22.990 + 35.45;
            const double rounding = 1e-4;
            var kilograms = given.Grams("water").Kilograms;
            var (fromSalt, fromSugar) = (2 * given["salt"] / salt / kilograms, 2 * sugar / kilograms);
            return
            [
                new("from_salt", fromSalt, rounding),
                new("from_sugar", fromSugar, rounding),
                new("together", fromSalt + fromSugar, rounding),
                new("as_much_sugar", given["salt"] * MolarMass.Sucrose / salt, rounding),
            ];
        },
    };

    private static YeastGasModel Model(Inputs given)
    {
        var growth = 1 + given["faster"];
        return YeastGasModel.Default with { GrowthPerDegree = new(growth, growth, growth) };
    }
}
