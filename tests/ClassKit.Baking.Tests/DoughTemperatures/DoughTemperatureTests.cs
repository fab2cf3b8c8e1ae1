using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.DoughTemperatures;

public sealed class DoughTemperatureTests
{
    [Fact]
    public void Three_factors_as_a_baking_institute_teaches_them()
    {
        // teaching material of a baking institute, common practice: 75 °F, flour 65, room 65, friction 8 → 87 °F
        var liquid = DoughTemperature
            .LiquidFor(F(75), [Factor("flour", 65), Factor("room", 65)], TemperatureDifference.FromFahrenheitDegrees(8))
            .Value;
        Assert.Equal(87, liquid.Temperature.Fahrenheit, 1e-9);
    }

    [Fact]
    public void Three_factors_as_a_trade_journal_works_them()
    {
        // Pizza Today, June 2018: 80 °F, flour 65, room 75, friction 35 → 65 °F
        var liquid = DoughTemperature
            .LiquidFor(F(80), [Factor("flour", 65), Factor("room", 75)], TemperatureDifference.FromFahrenheitDegrees(35))
            .Value;
        Assert.Equal(65, liquid.Temperature.Fahrenheit, 1e-9);
    }

    [Theory]
    // J. E. Wihlfahrt, A Treatise on Baking: shop + flour + water = 234, no friction, dough 78 °F
    [InlineData(85, 67, 82)]
    [InlineData(72, 62, 100)]
    public void Three_factors_as_a_treatise_of_old_gives_them(double shop, double flour, double water)
    {
        var liquid = DoughTemperature.LiquidFor(F(78), [Factor("room", shop), Factor("flour", flour)], default).Value;
        Assert.Equal(water, liquid.Temperature.Fahrenheit, 1e-9);
    }

    [Fact]
    public void A_preferment_makes_four_factors()
    {
        // By hand from the institute's rule (× 4 with a preferment): 4 × 75 - (65 + 65 + 70) - 8 = 92 °F
        var liquid = DoughTemperature
            .LiquidFor(
                F(75),
                [Factor("flour", 65), Factor("room", 65), Factor("preferment", 70)],
                TemperatureDifference.FromFahrenheitDegrees(8)
            )
            .Value;
        Assert.Equal(92, liquid.Temperature.Fahrenheit, 1e-9);
    }

    [Fact]
    public void A_trial_shows_the_friction()
    {
        // Pizza Today, June 2018, read backwards: 3 × 80 - (75 + 65 + 65) = 35 °F
        var friction = DoughTemperature.Friction(F(80), [Factor("room", 75), Factor("flour", 65), Factor("water", 65)]).Value;
        Assert.Equal(35, friction.FahrenheitDegrees, 1e-9);
    }

    [Fact]
    public void Water_of_the_computed_temperature_brings_the_dough_to_the_desired_one() =>
        Gen.Select(Gen.Double[15, 32], Gen.Double[5, 35], Gen.Double[5, 35], Gen.Double[0, 15])
            .Sample(
                (desired, flour, room, friction) =>
                {
                    TemperatureFactor[] others = [new("flour", Temperature.FromCelsius(flour)), new("room", Temperature.FromCelsius(room))];
                    var rub = TemperatureDifference.FromKelvins(friction);
                    var answer = DoughTemperature.LiquidFor(Temperature.FromCelsius(desired), others, rub, withYeast: false);
                    Assert.True(answer.IsPossible);
                    Assert.Equal(
                        desired,
                        DoughTemperature.Expected([.. others, new("water", answer.Value.Temperature)], rub).Value.Celsius,
                        1e-9
                    );
                }
            );

    [Fact]
    public void Water_that_kills_yeast_is_no_answer()
    {
        // 55 °C to 60 °C is thermal death: A. Gardiner and S. Wilson, The Inquisitive Cook, 1998. 3 × 32 - 20 - 18 = 58 °C
        TemperatureFactor[] cold = [new("flour", Temperature.FromCelsius(18)), new("room", Temperature.FromCelsius(20))];
        Assert.Equal("yeast-would-die", DoughTemperature.LiquidFor(Temperature.FromCelsius(32), cold, default).Why!.Code);
        Assert.Equal(
            58,
            DoughTemperature.LiquidFor(Temperature.FromCelsius(32), cold, default, withYeast: false).Value.Temperature.Celsius,
            1e-9
        );
    }

    [Fact]
    public void Water_above_46_C_goes_in_with_a_warning()
    {
        TemperatureFactor[] cool = [new("flour", Temperature.FromCelsius(16)), new("room", Temperature.FromCelsius(16))];
        var liquid = DoughTemperature.LiquidFor(Temperature.FromCelsius(27), cool, default).Value;
        Assert.Contains(liquid.Advice, advice => advice.Code == "hot-for-yeast");
    }

    [Fact]
    public void Water_colder_than_freezing_asks_for_ice()
    {
        TemperatureFactor[] summer = [new("flour", Temperature.FromCelsius(32)), new("room", Temperature.FromCelsius(33))];
        var liquid = DoughTemperature.LiquidFor(Temperature.FromCelsius(24), summer, TemperatureDifference.FromKelvins(14)).Value;
        Assert.Equal(-7, liquid.Temperature.Celsius, 1e-9);
        Assert.True(liquid.NeedsIce);
        Assert.Contains(liquid.Advice, advice => advice.Code == "needs-ice");
    }

    [Fact]
    public void What_no_ice_can_cool_is_explained()
    {
        TemperatureFactor[] hot = [new("flour", Temperature.FromCelsius(60)), new("room", Temperature.FromCelsius(60))];
        Assert.Equal("colder-than-ice", DoughTemperature.LiquidFor(Temperature.FromCelsius(10), hot, default).Why!.Code);
    }

    [Fact]
    public void The_rule_takes_two_to_four_factors()
    {
        Assert.Equal("wrong-number-of-factors", DoughTemperature.LiquidFor(F(75), [], default).Why!.Code);
        Assert.Equal("wrong-number-of-factors", DoughTemperature.Friction(F(75), [Factor("water", 70)]).Why!.Code);
    }

    [Fact]
    public void The_answer_tells_its_steps()
    {
        var steps = DoughTemperature
            .LiquidFor(
                Temperature.FromCelsius(26),
                [new("flour", Temperature.FromCelsius(21)), new("room", Temperature.FromCelsius(22))],
                TemperatureDifference.FromKelvins(4)
            )
            .Value.Explanation.Steps;
        Assert.Equal("liquid = total - known factors - friction = 78 °C - 43 °C - 4 °C = 31 °C (88 °F)", steps[^1].ToString());
    }

    private static Temperature F(double fahrenheit) => Temperature.FromFahrenheit(fahrenheit);

    private static TemperatureFactor Factor(string name, double fahrenheit) => new(name, F(fahrenheit));
}
