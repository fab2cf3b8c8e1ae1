using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
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
            var soda = Mass.FromGrams(Scaling.FromFlour(Doughs.Of(("bread_flour", 100), ("baking_soda", given.Percent("soda_percent"))), given.Grams("flour"), Scales.Common).Value.GramsOf("baking_soda"));
            var acid = Acid(given).For(soda).Value;
            return [new("soda", soda.Grams), new("acid", acid.Grams), new("leavening", (soda + acid).Grams), new("gas", Neutralization.Of(soda, acid, Acid(given)).Value.CarbonDioxide.Grams, RoundedShare)];
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
            return [new("volume", CarbonDioxide.DryVolume(gas, given.Celsius("temperature"), Pressure.Standard).Value.Litres, RoundedShare)];
        },
    };

    private static LeaveningAcid Acid(Inputs given) => new("acid", "Acid", given["nv"], "the exercise");
}
