using ClassKit.Baking.Household;
using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.Household;

public sealed class NotationTests
{
    // Exact factors: NIST SP 811, appendix B.8

    [Theory]
    [InlineData("1 3/4 cups", 1.75 * 236.5882365)]
    [InlineData("2 1/4 tsp", 2.25 * 4.92892159375)]
    [InlineData("1 tbsp", 14.78676478125)]
    [InlineData("½ cup", 118.29411825)]
    [InlineData("8 fl oz", 236.5882365)]
    [InlineData("1 gal", 3785.411784)]
    [InlineData("500 mL", 500)]
    [InlineData("1.5 L", 1500)]
    [InlineData("2 Tablespoons", 29.5735295625)]
    public void Volumes_are_read(string text, double millilitres)
    {
        Assert.True(VolumeNotation.TryParse(text, out var volume));
        Assert.Equal(millilitres, volume.Millilitres, 1e-9);
    }

    [Theory]
    [InlineData("cups")]
    [InlineData("3")]
    [InlineData("1 pinch")]
    [InlineData("-1 cup")]
    [InlineData("")]
    public void Other_texts_are_no_volumes(string text) => Assert.False(VolumeNotation.TryParse(text, out _));

    [Fact]
    public void A_cup_on_a_label_is_larger_than_a_cup_in_the_kitchen()
    {
        // 21 CFR 101.9(b)(5)(viii): 240 mL, 1.44 % more
        Assert.True(VolumeNotation.TryParse("1 cup", out var label, MeasureDefinition.NutritionLabel));
        Assert.Equal(240, label.Millilitres, 1e-9);
        Assert.Equal(1.0144, label / MeasureDefinition.UnitedStates.Cup, 0.00005);
    }

    [Fact]
    public void Four_ounces_on_a_label_are_112_grams()
    {
        // 21 CFR 101.9(b)(5)(viii) against the avoirdupois ounce
        Assert.Equal(112, (MeasureDefinition.NutritionLabel.Ounce * 4).Grams, 1e-9);
        Assert.Equal(113.398, (MeasureDefinition.UnitedStates.Ounce * 4).Grams, 0.0005);
    }

    [Theory]
    [InlineData(1.75 * 236.5882365, "1 3/4 cups")]
    [InlineData(236.5882365 / 3, "1/3 cup")]
    [InlineData(2.25 * 4.92892159375, "2 1/4 tsp")]
    [InlineData(14.78676478125, "1 tbsp")]
    [InlineData(0, "0 tsp")]
    public void Volumes_are_shown(double millilitres, string text) =>
        Assert.Equal(text, VolumeNotation.Show(Volume.FromMillilitres(millilitres)));

    [Fact]
    public void Shown_volumes_read_back_close() =>
        Gen.Double[1, 5000]
            .Sample(millilitres =>
            {
                Assert.True(VolumeNotation.TryParse(VolumeNotation.Show(Volume.FromMillilitres(millilitres)), out var back));
                Assert.Equal(millilitres, back.Millilitres, Math.Max(0.31, millilitres * 0.251));
            });

    [Theory]
    [InlineData("390 g", 390)]
    [InlineData("1.34 kg", 1340)]
    [InlineData("250 mg", 0.25)]
    [InlineData("2 1/2 lb", 1133.980925)]
    [InlineData("1 lb 4 oz", 566.9904625)]
    public void Masses_are_read(string text, double grams)
    {
        Assert.True(MassNotation.TryParse(text, out var mass));
        Assert.Equal(grams, mass.Grams, 1e-9);
    }

    [Theory]
    [InlineData("390")]
    [InlineData("g")]
    [InlineData("1,5 kg")]
    [InlineData("ten g")]
    public void Other_texts_are_no_masses(string text) => Assert.False(MassNotation.TryParse(text, out _));

    [Theory]
    [InlineData("350 F", 176.6666667)]
    [InlineData("350 °F", 176.6666667)]
    [InlineData("180 °C", 180)]
    [InlineData("180C", 180)]
    [InlineData("-40 F", -40)]
    [InlineData("37.5 degrees C", 37.5)]
    public void Temperatures_are_read(string text, double celsius)
    {
        Assert.True(TemperatureNotation.TryParse(text, out var temperature));
        Assert.Equal(celsius, temperature.Celsius, 1e-6);
    }

    [Theory]
    [InlineData("350")]
    [InlineData("350 K")]
    [InlineData("-500 F")]
    [InlineData("hot")]
    public void Other_texts_are_no_temperatures(string text) => Assert.False(TemperatureNotation.TryParse(text, out _));

    [Theory]
    // Printed pairs: FDA Food Code 41 °F/5 °C, 135 °F/57 °C, 165 °F/74 °C
    [InlineData(41, "5 °C (41 °F)")]
    [InlineData(135, "57 °C (135 °F)")]
    [InlineData(165, "74 °C (165 °F)")]
    [InlineData(350, "177 °C (350 °F)")]
    public void Temperatures_are_shown_in_both(double fahrenheit, string text) =>
        Assert.Equal(text, TemperatureNotation.Show(Temperature.FromFahrenheit(fahrenheit)));

    [Fact]
    public void An_oven_is_set_to_what_its_dial_shows() => Assert.Equal((190, 375), TemperatureNotation.Dial(Temperature.FromCelsius(190))); // 374 °F by NIST SP 811

    /// <summary>200 °C and 210 °C are 392 °F and 410 °F by NIST SP 811, B.9: no dial may show one mark for both.</summary>
    [Fact]
    public void What_differs_on_one_dial_differs_on_the_other()
    {
        var dials = Enumerable.Range(20, 33).Select(step => TemperatureNotation.Dial(Temperature.FromCelsius(step * 5))).ToList();
        Assert.Equal(dials.Count, dials.Select(dial => dial.Fahrenheit).Distinct().Count());
        Assert.All(dials, dial => Assert.InRange(dial.Fahrenheit - (dial.Celsius * 1.8 + 32), -2.5, 2.5));
    }

    /// <summary>What is no step of a dial and whole in one scale was written so by somebody.</summary>
    [Theory]
    [InlineData("350 F", 175, 350)]
    [InlineData("163 C", 163, 325)]
    [InlineData("237 C", 237, 460)]
    [InlineData("352 F", 180, 352)]
    public void What_somebody_wrote_comes_back(string written, double celsius, double fahrenheit)
    {
        Assert.True(TemperatureNotation.TryParse(written, out var oven));
        Assert.Equal((celsius, fahrenheit), TemperatureNotation.Dial(oven));
    }

    [Theory]
    [InlineData("28 C", "28 °C")]
    [InlineData("80 F", "27 °C (80 °F)")]
    [InlineData("27.5 C", "27.5 °C")]
    public void A_temperature_is_told_in_the_scale_that_it_was_written_in(string written, string told)
    {
        Assert.True(TemperatureNotation.TryParse(written, out var temperature));
        Assert.Equal(told, TemperatureNotation.AsWritten(temperature));
    }
}
