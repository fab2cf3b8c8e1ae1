using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.Tests.GasBudgets;

public sealed class SettingTemperatureTests
{
    private static readonly Band<Temperature> Lean = GasBudgetSettings.Default.SetTemperature;

    private static readonly BakersFormula Cake = Doughs.Of(
        "butter_cakes",
        Leavening.Chemical,
        ("cake_flour", 100),
        ("sugar", 100),
        ("unsalted_butter", 50),
        ("whole_egg", 50),
        ("whole_milk", 70),
        ("baking_powder", 4.5)
    );

    /// <summary>
    /// H. McGee, On Food and Cooking (2004), from memory: cakes set from 80 °C, those with as much sugar as flour and more near 100 °C.
    /// </summary>
    [Fact]
    public void A_cake_with_as_much_sugar_as_flour_sets_between_87_and_100_degrees()
    {
        var set = SettingTemperature.Of(Cake, Lean, Pressure.Standard);
        Assert.InRange(set.Low.Celsius, 87, 92);
        Assert.InRange(set.Typical.Celsius, 90, 97);
        Assert.InRange(set.High.Celsius, 95, 100);
    }

    [Fact]
    public void A_lean_dough_sets_where_lean_doughs_do() =>
        Assert.Equal(
            Lean.Typical.Celsius,
            SettingTemperature
                .Of(Doughs.Of("lean", Leavening.Yeast, ("bread_flour", 100), ("water", 65)), Lean, Pressure.Standard)
                .Typical.Celsius,
            1e-9
        );

    [Fact]
    public void More_sugar_sets_later_and_never_above_the_boiling_point()
    {
        // US Standard Atmosphere 1976: 785 hPa at 2100 m, where water boils at 93 °C
        var high = SettingTemperature.Of(Cake, Lean, Pressure.FromPascals(78_500));
        Assert.True(high.High.Celsius < Saturation.BoilingPoint(Pressure.FromPascals(78_500)).Celsius);
        Assert.True(high.Low.Celsius <= high.Typical.Celsius && high.Typical.Celsius <= high.High.Celsius);
        Assert.True(
            SettingTemperature.Of(Doughs.Muffins, Lean, Pressure.Standard).Typical.Celsius
                < SettingTemperature.Of(Cake, Lean, Pressure.Standard).Typical.Celsius
        );
    }

    /// <summary>
    /// By hand: at a density of 1.15 g/mL to 1.25 g/mL without gas, a specific gravity of 0.80 to 0.90 is 22 % to 36 % air (“Measuring
    /// specific gravity for cakes”, Bake magazine).
    /// </summary>
    [Fact]
    public void A_creamed_batter_is_a_quarter_to_a_third_air()
    {
        var air = BatterAir.ShareOf(Cake, BatterAir.CreamedSpecificGravity);
        Assert.InRange(air.Low, 0.15, 0.28);
        Assert.InRange(air.High, 0.28, 0.38);
        Assert.True(air.Low < air.Typical && air.Typical < air.High);
    }
}
