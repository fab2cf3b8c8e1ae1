using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
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
            return [new("water", water.Grams), new("steam", steam.Litres, 3e-4), new("hollows", hollows.Litres), new("fillings", steam / hollows, 3e-4)];
        },
        ["siphon_sponge"] = given =>
        {
            var inside = Kilopascals(given["gauge"] + given["outside"]);
            var growth = Expansion(inside, Kilopascals(given["outside"]));
            var gas = Volume.FromMillilitres(given["bubbles"]) * growth;
            return [new("absolute", inside.Pascals / 1000), new("growth", growth), new("gas", gas.Millilitres), new("foam", (gas + Volume.FromMillilitres(given["batter"])).Millilitres)];
        },
        ["mountain_powder"] = given =>
        {
            var growth = Expansion(Kilopascals(given["sea"]), Kilopascals(given["local"]));
            var gas = BakingPowder.AvailableCarbonDioxide(given.Grams("powder"), BakingPowder.UnitedStatesMinimumShare).Value;
            var volume = CarbonDioxide.DryVolume(gas, Temperature.FromCelsius(25), Kilopascals(given["local"])).Value;
            return
            [
                new("growth", growth),
                // 0.067 L in the problem's text is the gas of a powder of 12 % at 25 °C, rounded.
                new("gas", volume.Litres, 6e-3),
                new("powder_hut", (given.Grams("powder") / growth).Grams),
            ];
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

    private static Pressure Kilopascals(double kilopascals) => Pressure.FromPascals(kilopascals * 1000);

    /// <summary>How many times larger the same gas is under another pressure, at any one temperature.</summary>
    private static double Expansion(Pressure from, Pressure to)
    {
        var gas = AmountOfSubstance.FromMoles(1);
        var temperature = Temperature.FromCelsius(20);
        return IdealGas.Volume(gas, temperature, to) / IdealGas.Volume(gas, temperature, from);
    }
}
