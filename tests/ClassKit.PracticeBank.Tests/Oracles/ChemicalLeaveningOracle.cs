using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.PracticeBank.Tests.Oracles;

internal static class ChemicalLeaveningOracle
{
    /// <summary>The problems' texts say 52.4 % for 44.009/84.006.</summary>
    private const double RoundedShare = 4e-4;

    public static readonly Dictionary<string, Oracle> Exercises = new()
    {
        ["acid_for_the_soda"] = given =>
        {
            var soda = Mass.FromGrams(
                Scaling
                    .FromFlour(
                        Doughs.Of(("bread_flour", 100), ("baking_soda", given.Percent("soda_percent"))),
                        given.Grams("flour"),
                        Scales.Common
                    )
                    .Value.GramsOf("baking_soda")
            );
            var acid = Acid(given).For(soda).Value;
            return
            [
                new("soda", soda.Grams),
                new("acid", acid.Grams),
                new("leavening", (soda + acid).Grams),
                new("gas", Neutralization.Of(soda, acid, Acid(given)).Value.CarbonDioxide.Grams, RoundedShare),
            ];
        },
        ["tin_of_powder"] = given =>
        {
            var soda = given.Grams("soda");
            var acid = LeaveningAcid.CreamOfTartar.For(soda).Value;
            var filler = (soda + acid) * (given["starch"] / (1 - given["starch"]));
            return
            [
                new("acid", acid.Grams),
                new("powder", (soda + acid + filler).Grams),
                new("strength", BakingPowder.AvailableShare(soda, acid, LeaveningAcid.CreamOfTartar, filler).Value, RoundedShare),
            ];
        },
        ["sweet_milk_instead"] = given =>
        {
            var powder = BakingPowder.InPlaceOfSoda(given.Grams("soda"), given["powder_gas"]).Value;
            var formula = Doughs.FromWeights(Doughs.Weighed("ap_flour", given["flour"]), Doughs.Weighed("baking_powder", powder.Grams));
            return
            [
                new("gas", BakingPowder.AvailableCarbonDioxide(powder, given["powder_gas"]).Value.Grams, RoundedShare),
                new("powder", powder.Grams, RoundedShare),
                new("powder_percent", formula.ShareOf("baking_powder"), RoundedShare),
            ];
        },
        ["self_raising"] = given =>
        {
            var soda = BakingSoda.For(given.Grams("flour") * given["gas_goal"]);
            var acid = Acid(given).For(soda).Value;
            return
            [
                new("soda", soda.Grams, RoundedShare),
                new("acid", acid.Grams, RoundedShare),
                // A small difference of larger masses: their rounding weighs more in it.
                new("spare", given["flour"] * SelfRisingFlour.MaximumLeaveningPerFlour - (soda + acid).Grams, 10 * RoundedShare),
            ];
        },
        ["soda_balloon"] = given =>
        {
            var acid = LeaveningAcid.LacticAcid;
            var gas = Neutralization.Of(given.Grams("soda"), acid.For(given.Grams("soda")).Value * 2, acid).Value.CarbonDioxide;
            return
            [
                new("volume", CarbonDioxide.DryVolume(gas, given.Celsius("temperature"), Pressure.Standard).Value.Litres, RoundedShare),
            ];
        },
        ["sodium_of_a_slice"] = given =>
        {
            var flour = Scaling.FromDough(Bread(given, salt: true, soda: true), given.Grams("slice"), Scales.Common).Value.Flour;
            // The problem's text rounds USDA's 38.758 % and 27.360 % to a tenth.
            const double rounding = 2e-3;
            return
            [
                new("flour", flour.Grams),
                new("from_salt", Of(salt: true, soda: false), rounding),
                new("from_soda", Of(salt: false, soda: true), rounding),
                new("sodium", Of(salt: true, soda: true), rounding),
            ];
            double Of(bool salt, bool soda) => Sodium.In(Bread(given, salt, soda), given.Grams("slice")).Value.Grams * 1000;
        },
        ["ammonia_for_crackers"] = given =>
        {
            var ammonium = Carbonate.BakersAmmonia.InPlaceOf(Carbonate.BakingSoda, given.Grams("soda")).Value;
            return
            [
                new("gas", (ammonium * Carbonate.BakersAmmonia.CarbonDioxideByHeat).Grams, 2 * RoundedShare),
                new("ammonium", ammonium.Grams, 2 * RoundedShare),
                // 21.54 % is 21.5 % in the problem's text.
                new("fumes", (ammonium * Carbonate.BakersAmmonia.AmmoniaByHeat).Grams, 3e-3),
            ];
        },
        ["potassium_for_sodium"] = given =>
        {
            var potassium = Carbonate.PotassiumBicarbonate.InPlaceOf(Carbonate.BakingSoda, given.Grams("soda")).Value;
            var saved = given.Grams("soda") * (Carbonate.BakingSoda.SodiumShare - Carbonate.PotassiumBicarbonate.SodiumShare);
            // Molar masses are rounded to 0.01 g, and stoichiometric sodium is 27.37 % where USDA measured 27.36 %.
            return [new("potassium", potassium.Grams, 1e-4), new("saved", saved.Grams * 1000 / given["muffins"], 2e-3)];
        },
    };

    /// <summary>What is neither flour nor of interest is written as water: only the total counts.</summary>
    private static BakersFormula Bread(Inputs given, bool salt, bool soda)
    {
        var (saltPercent, sodaPercent) = (salt ? given.Percent("salt_percent") : 0, soda ? given.Percent("soda_percent") : 0);
        List<(string, double)> lines = [("bread_flour", 100), ("water", given.Percent("total_percent") - 100 - saltPercent - sodaPercent)];
        if (salt)
            lines.Add(("salt", saltPercent));
        if (soda)
            lines.Add(("baking_soda", sodaPercent));
        return Doughs.Of(lines);
    }

    private static LeaveningAcid Acid(Inputs given) => new("acid", "Acid", given["nv"], "the exercise");
}
