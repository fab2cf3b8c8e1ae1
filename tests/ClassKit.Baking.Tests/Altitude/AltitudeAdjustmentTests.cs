using ClassKit.Baking.Altitude;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Altitude;

public sealed class AltitudeAdjustmentTests
{
    // Table of Colorado State University Extension and USDA; oven also Colorado State University, news release of 2002-12-12

    [Fact]
    public void At_5000_feet_a_teaspoon_of_powder_loses_an_eighth_to_a_quarter()
    {
        var row = AltitudeAdjustment.For(5000 * 0.3048)!;
        Assert.Equal(new PublishedRange(0.75, 0.875), row.Leavening(1));
        Assert.Equal(new PublishedRange(2, 4), row.LiquidMore);
        Assert.Equal(new PublishedRange(0.5, 2), row.SugarLess);
        Assert.Equal(new PublishedRange(15, 25), row.OvenWarmer);
    }

    [Fact]
    public void At_7000_feet_a_cup_of_sugar_loses_one_to_three_tablespoons() =>
        Assert.Equal(new PublishedRange(13, 15), AltitudeAdjustment.For(7000 * 0.3048)!.Sugar(16));

    [Fact]
    public void At_3000_feet_a_cup_of_liquid_gains_one_to_two_tablespoons() =>
        Assert.Equal(new PublishedRange(17, 18), AltitudeAdjustment.For(3000 * 0.3048)!.Liquid(16));

    [Fact]
    public void Below_3000_feet_nothing_changes() => Assert.Null(AltitudeAdjustment.For(900));

    [Fact]
    public void Above_the_table_its_last_row_holds() => Assert.Equal(7000, AltitudeAdjustment.For(3500)!.FromFeet);
}
