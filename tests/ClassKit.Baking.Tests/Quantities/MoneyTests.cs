using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Quantities;

public sealed class MoneyTests
{
    [Fact]
    public void Money_prints_its_amount() => Assert.Equal("12.50", new Money(12.50m).ToString());

    [Theory]
    [InlineData(1.005, 1.01)]
    [InlineData(2.675, 2.68)]
    [InlineData(-1.005, -1.01)]
    public void Half_a_cent_goes_away_from_zero(double amount, double rounded) =>
        Assert.Equal((decimal)rounded, new Money((decimal)amount).Rounded.Amount); // by hand
}
