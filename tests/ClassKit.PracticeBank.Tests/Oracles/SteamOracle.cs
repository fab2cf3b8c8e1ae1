using ClassKit.Baking.Batches;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.PracticeBank.Tests.Oracles;

internal static class SteamOracle
{
    public static readonly Dictionary<string, Oracle> Exercises = new()
    {
        ["beaten_air"] = given =>
        {
            var growth = GasCell.DryExpansion(given.Celsius("start"), given.Celsius("end"));
            return
            [
                new("start_kelvin", given.Celsius("start").Kelvin),
                new("end_kelvin", given.Celsius("end").Kelvin),
                new("growth", growth),
                new("volume", (Volume.FromMillilitres(given["air"]) * growth).Millilitres),
            ];
        },
        ["choux_puffs"] = given =>
        {
            var dough = given.Grams("paste");
            // Bake loss is what has to be mixed beyond what is left.
            var water = dough - dough * (dough / DoughLoss.Of(given.Percent("loss")).DoughFor(dough).Value);
            var steam = SteamPocket.SteamFrom(water, Pressure.Standard).Value;
            var hollows = Volume.FromMillilitres(given["hollow"]) * given["pieces"];
            // The problem's text rounds 1.6733 L/g to 1.673.
            return
            [
                new("water", water.Grams),
                new("steam", steam.Litres, 3e-4),
                new("hollows", hollows.Litres),
                new("fillings", steam / hollows, 3e-4),
            ];
        },
        ["steam_up_high"] = given =>
        {
            // The problem's text rounds 1.6733 and 2.0872 L/g to four digits.
            const double rounding = 3e-4;
            var (sea, hills) = (Pressure.Standard, Pressure.FromPascals(80_000));
            double Room(Pressure pressure) => SteamPocket.SteamFrom(Mass.FromGrams(1), pressure).Value.Litres;
            var hollows = (Volume.FromMillilitres(given["hollow"]) * given["pieces"]).Litres;
            var more =
                SteamPocket.SteamFrom(given.Grams("gone"), hills).Value.Litres
                - SteamPocket.SteamFrom(given.Grams("gone"), sea).Value.Litres;
            return [new("sea", hollows / Room(sea), rounding), new("hills", hollows / Room(hills), rounding), new("more", more, 3e-3)];
        },
        ["siphon_sponge"] = given =>
        {
            var (inside, outside) = (Kilopascals(given["gauge"] + given["outside"]), Kilopascals(given["outside"]));
            // 1.1 mL in the problem's text rounds what the published equation gives at 5 °C.
            const double rounding = 7e-3;
            var (before, after) = (Dissolved(given, inside), Dissolved(given, outside));
            var freed = IdealGas.Volume(AmountOfSubstance.FromMoles(before.Moles - after.Moles), Fridge, outside);
            return
            [
                new("absolute", inside.Pascals / 1000),
                new("growth", Expansion(inside, outside)),
                new("dissolved", IdealGas.Volume(before, Fridge, inside).Millilitres, rounding),
                new("freed", freed.Millilitres, rounding),
                new("foam", (freed + Volume.FromMillilitres(given["batter"])).Millilitres, rounding),
            ];
        },
        ["mountain_powder"] = given =>
        {
            var (sea, local) = (Kilopascals(given["sea"]), Kilopascals(given["local"]));
            var soft = Temperature.FromCelsius(75);
            var gas = AmountOfSubstance.FromMoles(1);
            var growth = GasCell.VolumeOf(gas, soft, local).Value / GasCell.VolumeOf(gas, soft, sea).Value;
            // 38.6 kPa in the problem's text rounds the saturation pressure at 75 °C, 38.595 kPa.
            const double rounding = 2e-4;
            return
            [
                new("gas_sea", (sea.Pascals - Saturation.PressureAt(soft).Pascals) / 1000, rounding),
                new("gas_hut", (local.Pascals - Saturation.PressureAt(soft).Pascals) / 1000, rounding),
                new("growth", growth, rounding),
                new("powder_hut", (given.Grams("powder") / growth).Grams, rounding),
            ];
        },
        ["batter_in_a_cup"] = given =>
        {
            var (empty, batter) = (given.Grams("empty"), given.Grams("with_batter") - given.Grams("empty"));
            var water = given.Grams("with_water") - empty;
            // A millilitre for each gram of water: the cup's room cancels out of both ratios.
            var cup = Volume.FromMillilitres(water.Grams);
            var solid = Volume.FromMillilitres(batter.Grams / given["no_air"]);
            return [new("batter", batter.Grams), new("gravity", batter / water), new("air", (cup - solid) / cup)];
        },
        ["syrup_in_the_hills"] = given =>
        {
            // The extension table's straight line is within 0.4 °F of the standard atmosphere with water's saturation line.
            const double metresPerFoot = 0.3048;
            var boiling = Saturation.BoilingPoint(StandardAtmosphere.PressureAt(given["altitude"] * metresPerFoot).Value);
            var drop = TemperatureDifference.FromFahrenheitDegrees(given["altitude"] / 1000 * given["per_thousand"]);
            return
            [
                new("drop", 211.953 - boiling.Fahrenheit, 0.4 / drop.FahrenheitDegrees),
                new("boil", boiling.Fahrenheit, 0.4 / boiling.Fahrenheit),
                new("done", given["syrup"] - drop.FahrenheitDegrees),
                new("drop_celsius", drop.Kelvins),
            ];
        },
        ["wet_bubble"] = given =>
        {
            var expansion = GasCell.Expansion(given.Celsius("start"), given.Celsius("end"), Kilopascals(given["outside"])).Value;
            // Vapour pressures are rounded in the problem's text.
            return [new("grown", (Volume.FromMillilitres(given["bubble"]) * expansion).Millilitres, 2e-4)];
        },
    };

    private static readonly Temperature Fridge = Temperature.FromCelsius(5);

    /// <summary>
    /// Nitrous oxide in the batter's water at 5 °C: Weiss and Price, Marine Chemistry 8 (1980) 347, equation for K0 in fresh water, mol/(L
    /// atm).
    /// </summary>
    private static AmountOfSubstance Dissolved(Inputs given, Pressure pressure)
    {
        var hundreds = Fridge.Kelvin / 100;
        var molesPerLitre =
            Math.Exp(-62.7062 + 97.3066 / hundreds + 24.1406 * Math.Log(hundreds)) * pressure.Pascals / Pressure.Standard.Pascals;
        return AmountOfSubstance.FromMoles(molesPerLitre * given["water"] / 1000);
    }

    private static Pressure Kilopascals(double kilopascals) => Pressure.FromPascals(kilopascals * 1000);

    /// <summary>How many times larger the same gas is under another pressure, at any one temperature.</summary>
    private static double Expansion(Pressure from, Pressure to)
    {
        var gas = AmountOfSubstance.FromMoles(1);
        var temperature = Temperature.FromCelsius(20);
        return IdealGas.Volume(gas, temperature, to) / IdealGas.Volume(gas, temperature, from);
    }
}
