using ClassKit.Baking.Altitude;
using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Household;
using ClassKit.Baking.Preferments;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;
using CsCheck;

namespace ClassKit.Baking.Tests;

/// <summary>What must come back when it is undone, and what must add up, whatever the numbers.</summary>
public sealed class IdentityTests
{
    private const double PartInAMillionMillion = 1e-12;

    [Fact]
    public void Temperatures_come_back_from_fahrenheit_and_kelvin() =>
        Gen.Double[-270, 2000]
            .Sample(celsius =>
            {
                // The scale has its zero elsewhere, so the rounding is that of the kelvins
                var tolerance = (Math.Abs(celsius) + 273.15) * PartInAMillionMillion;
                Assert.Equal(celsius, Temperature.FromFahrenheit(Temperature.FromCelsius(celsius).Fahrenheit).Celsius, tolerance);
                Assert.Equal(celsius, Temperature.FromKelvin(Temperature.FromCelsius(celsius).Kelvin).Celsius, tolerance);
            });

    [Fact]
    public void Volumes_of_every_kitchen_come_back() =>
        Gen.Select(Gen.Double[0.001, 1000], Doughs.AnyOf([.. MeasureDefinition.All]))
            .Sample(
                (number, measures) =>
                {
                    foreach (var unit in new[] { measures.Cup, measures.FluidOunce, measures.Tablespoon, measures.Teaspoon, measures.Pint })
                        Assert.Equal(number, unit * number / unit, number * PartInAMillionMillion);
                }
            );

    [Fact]
    public void Pounds_and_ounces_read_back_as_they_were_written() =>
        Gen.Int[1, 64_000]
            .Sample(quarters =>
            {
                var mass = Mass.FromOunces(quarters / 4.0);
                Assert.True(PoundsAndOunces.TryParse(PoundsAndOunces.Show(mass), out var back));
                Assert.Equal(mass.Grams, back.Grams, mass.Grams * PartInAMillionMillion);
                Assert.Equal(PoundsAndOunces.Show(mass), PoundsAndOunces.Show(back));
            });

    [Fact]
    public void Volumes_in_cups_and_spoons_are_written_again_as_they_were_read() =>
        Gen.Select(Gen.Double[1, 20_000], Doughs.AnyOf([.. MeasureDefinition.All]))
            .Sample(
                (millilitres, measures) =>
                {
                    var text = VolumeNotation.Show(Volume.FromMillilitres(millilitres), measures);
                    Assert.True(VolumeNotation.TryParse(text, out var back, measures));
                    // A quantity just below the next larger measure is rounded up to it, and then reads in that measure
                    if (VolumeNotation.Show(back, measures) is var again && again != text)
                        Assert.True(
                            VolumeNotation.TryParse(again, out var third, measures) && Math.Abs(third / back - 1) < PartInAMillionMillion,
                            $"{text} became {again}"
                        );
                }
            );

    [Fact]
    public void Temperatures_are_written_again_as_they_were_read() =>
        Gen.Int[-40, 600]
            .Sample(fahrenheit =>
            {
                Assert.True(TemperatureNotation.TryParse($"{fahrenheit} F", out var read));
                Assert.Equal(fahrenheit, read.Fahrenheit, 1e-9);
                Assert.EndsWith($"({fahrenheit} °F)", TemperatureNotation.Show(read), StringComparison.Ordinal);
            });

    [Fact]
    public void What_is_mixed_ahead_and_what_is_left_are_the_whole_formula_again() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[50, 100], Gen.Double[100, 50_000])
            .Sample(
                (flourPercent, water, flour) =>
                {
                    var total = Doughs.Worksheet;
                    var poolish = SubMix.FromOwnPercentages(
                        "Poolish",
                        flourPercent,
                        Doughs.Of("p", Leavening.Yeast, ("bread_flour", 100), ("water", water), ("instant_yeast", 0.1)).Lines
                    );
                    var sheet = FormulaSheet.For(total, [poolish], Mass.FromGrams(flour)).Value;
                    Assert.All(sheet.Rows, row =>
                        Assert.Equal(
                            row.Total.Grams,
                            row.Final.Grams + row.InSubMixes.Sum(mass => mass.Grams),
                            flour * PartInAMillionMillion
                        )
                    );

                    var again = FormulaSheet
                        .Overall(
                            "again",
                            "Again",
                            total.Leavening,
                            [
                                .. sheet
                                    .Rows.Where(row => row.Final.Grams > 0)
                                    .Select(row => new WeighedIngredient(row.Ingredient, row.Final)),
                            ],
                            [
                                .. sheet
                                    .Rows.Where(row => row.InSubMixes[0].Grams > 0)
                                    .Select(row => new WeighedIngredient(row.Ingredient, row.InSubMixes[0])),
                            ]
                        )
                        .Value;
                    Assert.All(total.Lines, line =>
                        Assert.Equal(
                            line.Percent,
                            again.Lines.Single(other => other.Ingredient.Id == line.Ingredient.Id).Percent,
                            line.Percent * 1e-9
                        )
                    );
                }
            );

    [Fact]
    public void The_heat_of_ice_from_the_freezer_balances_too() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[5, 35], Gen.Double[0.1, 5], Gen.Double[-25, 0])
            .Sample(
                (kilograms, tap, drop, cold) =>
                {
                    var wanted = tap - drop;
                    var iced = Ice.For(
                        Mass.FromKilograms(kilograms),
                        Temperature.FromCelsius(tap),
                        Temperature.FromCelsius(wanted),
                        IceModel.Replacing,
                        Temperature.FromCelsius(cold)
                    ).Value;
                    var takenUp = iced.Ice.Kilograms * (-cold * Ice.IceHeatOverWater + Ice.MeltingKelvins + wanted);
                    Assert.Equal(iced.Liquid.Kilograms * drop, takenUp, kilograms * 1e-9);
                }
            );

    [Fact]
    public void Losses_taken_off_again_leave_what_was_wanted() =>
        Gen.Select(Gen.Double[1, 10_000], Gen.Double[0, 40], Gen.Double[0, 40], Gen.Enum<LossRule>())
            .Sample(
                (wanted, first, second, rule) =>
                {
                    DoughLoss loss = new([first, second], rule);
                    var dough = loss.DoughFor(Mass.FromGrams(wanted)).Value;
                    Assert.Equal(wanted, dough.Grams * (1 - loss.TotalPercent / 100), wanted * PartInAMillionMillion);
                }
            );

    [Fact]
    public void Yeast_and_time_are_two_sides_of_one_equation() =>
        Gen.Select(Gen.Double[10, 300], Gen.Double[18, 34], Gen.Double[3, 34], Gen.Double[10, 2000])
            .Sample(
                (minutes, known, planned, plannedMinutes) =>
                {
                    var ratio = EquivalentSchedule
                        .YeastRatio(
                            minutes,
                            Temperature.FromCelsius(known),
                            plannedMinutes,
                            Temperature.FromCelsius(planned),
                            YeastGasModel.Default
                        )
                        .Value.Typical;
                    var back = EquivalentSchedule.Minutes(
                        minutes,
                        Temperature.FromCelsius(known),
                        Temperature.FromCelsius(planned),
                        ratio,
                        YeastGasModel.Default
                    );
                    if (back.TryGet(out var found, out _))
                        Assert.Equal(plannedMinutes, found.Typical, plannedMinutes * 1e-9);
                }
            );

    [Fact]
    public void Carbon_and_mass_are_kept_when_sugar_ferments() =>
        Assert.Equal(MolarMass.Sucrose + MolarMass.Water, 4 * MolarMass.CarbonDioxide + 4 * MolarMass.Ethanol, 1e-9); // C12H22O11 + H2O → 4 CO2 + 4 C2H5OH

    [Fact]
    public void A_formula_changed_for_altitude_sums_as_its_lines_do() =>
        Gen.Select(Gen.Double[914.4, 4000], Gen.Double[0, 1], Doughs.AnyOf([.. AltitudeTable.All]))
            .Sample(
                (metres, place, table) =>
                {
                    var changed = AltitudeFormula.For(Doughs.Muffins, metres, table, place).Value;
                    Assert.Equal(100, changed.Adjusted.FlourPercent, 1e-9);
                    Assert.All(changed.Lines, line => Assert.InRange(line.Chosen, line.Range.Low - 1e-9, line.Range.High + 1e-9));
                }
            );
}
