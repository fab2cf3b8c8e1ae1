using ClassKit.Baking.Household;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Household;

public sealed class PoundsAndOuncesTests
{
    [Fact]
    public void The_recipe_services_348_portions()
    {
        // Armed Forces Recipe Service, A-1: 1.25 lb for 100, 348 portions: 4.35 lb = 4 lb 5.60 oz → 4 lb 5 1/2 oz
        Assert.Equal("4 lb 5 1/2 oz", PoundsAndOunces.Show(Mass.FromPounds(1.25) * 3.48));
    }

    [Theory]
    // Armed Forces Recipe Service, A-1, rounding of ounces: .00-.12, .13-.37, .38-.62, .63-.87, .88-.99
    [InlineData(5.00, "5 oz")]
    [InlineData(5.12, "5 oz")]
    [InlineData(5.13, "5 1/4 oz")]
    [InlineData(5.37, "5 1/4 oz")]
    [InlineData(5.38, "5 1/2 oz")]
    [InlineData(5.62, "5 1/2 oz")]
    [InlineData(5.63, "5 3/4 oz")]
    [InlineData(5.87, "5 3/4 oz")]
    [InlineData(5.88, "6 oz")]
    [InlineData(5.99, "6 oz")]
    [InlineData(15.95, "1 lb")]
    [InlineData(32.0, "2 lb")]
    public void Ounces_go_to_the_nearest_quarter(double ounces, string text) =>
        Assert.Equal(text, PoundsAndOunces.Show(Mass.FromOunces(ounces)));

    [Theory]
    [InlineData("4 lb 5 1/2 oz", 69.5)]
    [InlineData("2 lb", 32)]
    [InlineData("5.5 oz", 5.5)]
    [InlineData("1 1/2 lb", 24)]
    [InlineData("1 lb. 4 oz.", 20)]
    [InlineData("½ oz", 0.5)]
    [InlineData("3 pounds", 48)]
    public void Pounds_and_ounces_are_read(string text, double ounces)
    {
        Assert.True(PoundsAndOunces.TryParse(text, out var mass));
        Assert.Equal(ounces, mass.Ounces, 1e-9);
    }

    [Theory]
    [InlineData("")]
    [InlineData("lb")]
    [InlineData("4")]
    [InlineData("5 oz 4 lb")]
    [InlineData("1/0 oz")]
    public void Anything_else_is_not(string text) => Assert.False(PoundsAndOunces.TryParse(text, out _));
}
