using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Quantities;

namespace ClassKit.PracticeBank.Tests.Oracles;

internal static class DoughTemperatureOracle
{
    public static readonly Dictionary<string, Oracle> Exercises = new()
    {
        ["water_for_the_dough"] = given =>
        {
            var friction = TemperatureDifference.FromKelvins(given["friction"]);
            var water = DoughTemperature
                .LiquidFor(given.Celsius("want"), [Factor(given, "room"), Factor(given, "flour_temp")], friction)
                .Value.Temperature;
            // Three factors at the wanted temperature sum up to three times it.
            var threeTimes = -DoughTemperature
                .Friction(Temperature.FromCelsius(0), [Dough(given), Dough(given), Dough(given)])
                .Value.Kelvins;
            return
            [
                new("three_times", threeTimes),
                new("known", threeTimes - water.Celsius),
                new("water", water.Celsius),
                new("water_f", water.Fahrenheit),
            ];
        },
        ["four_factors"] = given =>
        {
            var friction = DoughTemperature
                .Friction(
                    given.Celsius("dough_before"),
                    [
                        Factor(given, "room_before"),
                        Factor(given, "flour_before"),
                        Factor(given, "poolish_before"),
                        Factor(given, "water_before"),
                    ]
                )
                .Value;
            var water = DoughTemperature
                .LiquidFor(given.Celsius("want"), [Factor(given, "room"), Factor(given, "flour_temp"), Factor(given, "poolish")], friction)
                .Value;
            return [new("friction", friction.Kelvins), new("water", water.Temperature.Celsius)];
        },
        ["ice_step_by_step"] = given =>
        {
            var (water, tap, need) = (given.Grams("water"), given.Celsius("tap"), given.Celsius("need"));
            var iced = Ice.For(water, tap, need).Value;
            var drop = tap.Celsius - need.Celsius;
            return
            [
                new("drop", drop),
                new("heat", water.Grams * drop),
                new("each_gram", water.Grams * drop / iced.Ice.Grams),
                new("ice", iced.Ice.Grams),
                new("from_the_tap", iced.Liquid.Grams),
            ];
        },
        ["ice_in_pounds"] = given =>
        {
            var iced = Ice.For(Mass.FromPounds(given["water"]), given.Fahrenheit("tap"), given.Fahrenheit("need")).Value;
            return [new("ice", iced.Ice.Pounds), new("ice_ounces", iced.Ice.Ounces), new("from_the_tap", iced.Liquid.Pounds)];
        },
        ["hot_weekend"] = given =>
        {
            var water = DoughTemperature
                .LiquidFor(
                    given.Celsius("want"),
                    [Factor(given, "room"), Factor(given, "flour_temp")],
                    TemperatureDifference.FromKelvins(given["friction"])
                )
                .Value.Temperature;
            var iced = Ice.For(given.Grams("water"), given.Celsius("tap"), water, ice: given.Celsius("ice_at")).Value;
            // Half of the heat of water in the problem's text is 2.108 over 4.187 to Baking.
            return [new("ice", iced.Ice.Grams, 1e-3), new("from_the_tap", iced.Liquid.Grams, 1e-3)];
        },
    };

    private static TemperatureFactor Factor(Inputs given, string name) => new(name, given.Celsius(name));

    private static TemperatureFactor Dough(Inputs given) => Factor(given, "want");
}
