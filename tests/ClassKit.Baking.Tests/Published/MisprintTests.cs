using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Costing;
using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Baking.Weighing;

namespace ClassKit.Baking.Tests.Published;

/// <summary>
/// Printed keys can be wrong: each of these stands in a published source, and a check against our computation catches it.
/// </summary>
public sealed class MisprintTests
{
    /// <summary>What is printed, what is so, and how near two figures of that many digits must be.</summary>
    public static TheoryData<string, double, double, double> Misprints { get; } =
        new()
        {
            { "Texas Education Agency key (2015): 1/2 oz of salt on 15 oz of flour printed as 0.33 %", 0.33, Percent(15, 0.5), 0.005 },
            {
                "Texas Education Agency key (2015): 11.5 oz on 48 oz printed as 23.95 %, cut off and not rounded",
                23.95,
                Percent(48, 11.5),
                0.005
            },
            {
                "Sosland Publishing, Bake, French bread with poolish: 0.007 kg of yeast on 3.3 kg printed as 20 %",
                20,
                Percent(3.3, 0.007),
                0.5
            },
            {
                "college worksheet \"Baker's Percentage Worksheet\", author and year not known: 16 747 g, rounded first, times 67 % printed as 11 220.49 g",
                11220.49,
                Scaling.FromDough(Doughs.Worksheet, Mass.FromGrams(28_470), Scales.Common).Value.Lines[1].Exact.Grams,
                0.005
            },
            {
                "A. Gardiner and S. Wilson, The Inquisitive Cook, 1998: 200 °F printed as 100 °C",
                100,
                Temperature.FromFahrenheit(200).Celsius,
                0.5
            },
            { "a reprint of the extension table: 208.4 °F printed as 98.4 °C", 98.4, Temperature.FromFahrenheit(208.4).Celsius, 0.05 },
            {
                "NIST metric kitchen table: half a gallon printed as 1950 mL",
                1950,
                Volume.FromLitres(Volume.LitresPerGallon / 2).Millilitres,
                5
            },
            {
                "college slides on yields, author and year not known: 24 of 36 printed as 66.6 %, cut off and not rounded",
                66.6,
                YieldTest.Of(Mass.FromPounds(36), Mass.FromPounds(24)).Value.Share * 100,
                0.05
            },
            {
                "a published post: 4.4 kg of ice to replace water, 40 kg from 20 °C to 10 °C",
                4.4,
                Ice.For(Mass.FromKilograms(40), Temperature.FromCelsius(20), Temperature.FromCelsius(10)).Value.Ice.Kilograms,
                0.05
            },
            {
                "W. Gisslen, Professional Baking: steam takes 1,100 times the room of water",
                1100,
                SteamPocket.SteamFrom(Mass.FromGrams(998.2), Pressure.Standard).Value.Litres,
                50
            },
            { "a reprint of the SI table: -25.96 °C at 4572 m", -25.96, 15 - 0.0065 * 4572, 0.005 },
            {
                "a reprint of the table in feet: 6.759 psi at 20 000 ft called geopotential, which are geometric",
                6.759,
                StandardAtmosphere.PressureAt(20_000 * 0.3048, AltitudeKind.Geopotential).Value.Pascals / 6894.757,
                0.0005
            },
            {
                "forum.arduino.cc, topic 522736: 37.944 + 334 + 83.74 printed as 454.064, so 1383 g of ice at -18 °C",
                1383.17,
                Ice.For(
                    Mass.FromKilograms(30),
                    Temperature.FromCelsius(25),
                    Temperature.FromCelsius(20),
                    IceModel.Added,
                    Temperature.FromCelsius(-18)
                ).Value.Ice.Grams,
                4
            },
            {
                "college slides on recipe costing, author and year not known: 100 / 80 printed as 1.333",
                1.333,
                YieldTest.Of(Mass.FromPounds(10), Mass.FromPounds(8)).Value.Factor,
                0.0005
            },
            {
                "\"1 tsp powder = 1/4 tsp soda + 5/8 tsp cream of tartar\": 0.625 tsp where the soda takes 0.86",
                0.625,
                LeaveningAcid.CreamOfTartar.For(Mass.FromGrams(4.6 / 4)).Value.Grams / 3.0,
                0.05
            },
        };

    [Theory]
    [MemberData(nameof(Misprints))]
    public void A_misprint_is_caught(string where, double printed, double computed, double tolerance) =>
        Assert.True(Math.Abs(printed - computed) > tolerance, $"{where}: {computed} would have passed");

    private static double Percent(double flour, double other) =>
        Percentages
            .FromWeights(
                "f",
                "F",
                Leavening.Yeast,
                [new(IngredientCatalog.Get("ap_flour"), Mass.FromOunces(flour)), new(IngredientCatalog.Get("salt"), Mass.FromOunces(other))]
            )
            .Value.Lines[1]
            .Percent;
}
