using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.GasBudgets;

public sealed class SteamFateTests
{
    private static readonly SteamFate Popover = Of(Doughs.Popovers);

    /// <summary>
    /// By hand: 60 g lose 20 % to 35 % (12 g to 21 g), and a gram of steam at sea level fills 1.673 L (steam tables): 20 L to 35 L.
    /// </summary>
    [Fact]
    public void A_popovers_water_leaves_as_tens_of_litres_of_steam()
    {
        Assert.Equal(60 * 0.20 * 1.673, Popover.Lost.Low.Litres, 0.05);
        Assert.Equal(60 * 0.35 * 1.673, Popover.Lost.High.Litres, 0.05);
    }

    /// <summary>
    /// A choux puff or popover holds a hundredth and less of the steam that it makes (the bank's exercise on choux puffs asks for it).
    /// </summary>
    [Fact]
    public void What_is_made_is_what_is_held_and_what_is_lost()
    {
        Assert.Equal(Popover.Made.Typical.Litres, Popover.Held.Typical.Litres + Popover.Lost.Typical.Litres, 1e-9);
        Assert.InRange(Popover.Held.Typical / Popover.Made.Typical, 0.001, 0.02);
        Assert.True(Popover.Held.Low < Popover.Held.Typical && Popover.Held.Typical < Popover.Held.High);
    }

    [Fact]
    public void A_crumb_holds_no_steam_as_steam_and_loses_water_all_the_same()
    {
        var muffin = Of(Doughs.Muffins);
        Assert.Equal(0, muffin.Held.High.Litres);
        Assert.Equal(60 * 0.11, muffin.WaterLost.Low.Grams, 1e-9);
    }

    private static SteamFate Of(BakersFormula formula) =>
        GasBudget
            .Of(
                formula,
                Mass.FromGrams(60),
                [
                    new("Rest", new(30, 30, 30), Temperature.FromCelsius(24), false),
                    new("Bake", new(35, 35, 35), Temperature.FromCelsius(220), true),
                ],
                Temperature.FromCelsius(24),
                Pressure.Standard,
                GasBudgetSettings.Default
            )
            .Value.SteamFate;
}
