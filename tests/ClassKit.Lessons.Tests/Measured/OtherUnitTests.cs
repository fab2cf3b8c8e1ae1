using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Observations;

namespace ClassKit.Lessons.Tests.Measured;

/// <summary>By hand: 2.1 in are 53 mm, 203 °F are 95 °C, 2.1 oz are 60 g, and 5.3 cm are 53 mm.</summary>
public sealed class OtherUnitTests
{
    [Theory]
    [InlineData(Measure.Height, UnitSystem.Metric, 48, 58, 2.1, "in", 53.34)]
    [InlineData(Measure.Height, UnitSystem.Metric, 48, 58, 5.3, "cm", 53)]
    [InlineData(Measure.Height, UnitSystem.UnitedStates, 1.9, 2.3, 53.34, "mm", 2.1)]
    [InlineData(Measure.InternalTemperature, UnitSystem.Metric, 93, 100, 203, "°F", 95)]
    [InlineData(Measure.InternalTemperature, UnitSystem.UnitedStates, 200, 212, 95, "°C", 203)]
    [InlineData(Measure.MassBefore, UnitSystem.Metric, 57, 63, 2.1, "oz", 59.53)]
    [InlineData(Measure.MassBefore, UnitSystem.UnitedStates, 2, 2.3, 60, "g", 2.12)]
    public void It_is_known_by_what_it_would_be(
        Measure measure,
        UnitSystem units,
        double low,
        double high,
        double typed,
        string symbol,
        double meant
    )
    {
        var other = OtherUnit.Of(typed, Quantity(measure, units, new(low, (low + high) / 2, high)))!;

        Assert.Equal(symbol, other.Symbol);
        Assert.Equal(meant, other.Meant, 0.01);
    }

    [Theory]
    [InlineData(53)]
    [InlineData(42)]
    [InlineData(20)]
    [InlineData(300)]
    public void What_is_near_and_what_no_unit_explains_is_not_asked_about_so(double typed) =>
        Assert.Null(OtherUnit.Of(typed, Quantity(Measure.Height, UnitSystem.Metric, new(48, 53, 58))));

    [Fact]
    public void Without_a_forecast_the_rest_tells()
    {
        var quantity = Quantity(Measure.Height, UnitSystem.Metric, null, 50, 54, 52, 2.1);

        Assert.Equal("in", OtherUnit.Of(2.1, quantity)!.Symbol);
        Assert.Null(OtherUnit.Of(2.1, Quantity(Measure.Height, UnitSystem.Metric, null)));
    }

    private static MeasuredQuantity Quantity(Measure measure, UnitSystem units, Band<double>? expected, params double[] points) =>
        new(
            new(measure, "Less?", "More?"),
            ObservedUnit.For(measure, units),
            expected,
            [.. points.Select((value, at) => new MeasuredPoint($"{at}", 1, value, value < 10))]
        );
}
