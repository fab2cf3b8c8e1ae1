using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.FoodSafety;

public sealed class HoldingRuleTests
{
    [Fact]
    public void Soup_at_137_F_is_hot_by_the_food_code_and_not_by_the_city()
    {
        // FDA Food Code 3-501.16 (WAC 246-215-03525): 135 °F, 57 °C; New York City Health Code: 140 °F
        var soup = Temperature.FromFahrenheit(137);
        Assert.True(HoldingRule.FoodCode.Allows(soup));
        Assert.False(HoldingRule.OneHundredAndForty.Allows(soup));
        Assert.All(HoldingRule.All, rule =>
            Assert.True(rule.Allows(Temperature.FromCelsius(4)) && !rule.Allows(Temperature.FromCelsius(21)))
        );
        Assert.Equal(HoldingRule.FoodCode, HoldingRule.All[0]);
    }

    [Theory]
    // FDA Food Code, printed pairs, to the whole degree
    [InlineData(41, 5)]
    [InlineData(45, 7)]
    [InlineData(70, 21)]
    [InlineData(135, 57)]
    [InlineData(145, 63)]
    [InlineData(165, 74)]
    public void The_codes_degrees_agree(double fahrenheit, double celsius) =>
        Assert.Equal(celsius, Temperature.FromFahrenheit(fahrenheit).Celsius, 0.5);

    [Theory]
    // FDA Food Code 3-501.19: 4 h, or 6 h if cold to begin with and never above 70 °F (21 °C), as adopted in Wisconsin, ATCP 75
    [InlineData(24, 27, 240)]
    [InlineData(5, 21, 360)]
    [InlineData(5, 25, 240)]
    [InlineData(9, 20, 240)]
    // 3-501.19(B)(1): 57 °C (135 °F) or above when removed from hot holding, 4 h from then
    [InlineData(57.3, 57.3, 240)]
    [InlineData(60, 60, 240)]
    public void Batter_on_the_bench_has_four_hours_or_six(double start, double warmest, double minutes) =>
        Assert.Equal(minutes, TimeControl.MinutesUntilDiscarded(Temperature.FromCelsius(start), Temperature.FromCelsius(warmest)).Value);

    [Fact]
    public void What_needs_no_clock_is_explained()
    {
        Assert.Equal("under-control", TimeControl.MinutesUntilDiscarded(Temperature.FromCelsius(3), Temperature.FromCelsius(4)).Why!.Code);
        // 3-501.19(B)(1): what leaves the heat has its 4 h whichever limit of heat is kept
        Assert.All(HoldingRule.All, rule =>
            Assert.Equal(
                240,
                TimeControl.MinutesUntilDiscarded(Temperature.FromFahrenheit(137), Temperature.FromFahrenheit(137), rule).Value
            )
        );
        Assert.Equal(
            "warmest-below-start",
            TimeControl.MinutesUntilDiscarded(Temperature.FromCelsius(24), Temperature.FromCelsius(10)).Why!.Code
        );
    }
}
