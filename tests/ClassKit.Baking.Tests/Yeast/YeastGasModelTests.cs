using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.Tests.Yeast;

public sealed class YeastGasModelTests
{
    private static readonly YeastGasModel Model = YeastGasModel.Default;

    [Fact]
    public void Five_degrees_warmer_is_1_61_times_as_fast()
    {
        // Sosland Publishing, Bake, "The science of fermentation": 1 °C is about 10 %, so 1.1^5 = 1.6105
        var ratio = Model.RelativeRate(Temperature.FromCelsius(30)).Typical / Model.RelativeRate(Temperature.FromCelsius(25)).Typical;
        Assert.Equal(1.6105, ratio, 0.0001);
    }

    [Theory]
    // A. Gardiner and S. Wilson, The Inquisitive Cook, 1998: thermal death at 55 °C to 60 °C
    [InlineData(60)]
    [InlineData(75)]
    public void Dead_yeast_makes_nothing(double celsius) => Assert.Equal(0, Model.RelativeRate(Temperature.FromCelsius(celsius)).High);

    [Fact]
    public void The_refrigerator_slows_yeast_without_stopping_it()
    {
        var cold = Model.RelativeRate(Temperature.FromCelsius(4));
        Assert.InRange(cold.Low, 0.001, 0.2);
        Assert.True(cold.Low < cold.High);
    }

    [Fact]
    public void The_rate_is_greatest_between_32_and_40_degrees()
    {
        // Sosland Publishing, Bake, "The science of fermentation": optimum activity 32 °C to 40 °C
        var best = Enumerable.Range(0, 61).MaxBy(celsius => Model.RelativeRate(Temperature.FromCelsius(celsius)).Typical);
        Assert.InRange(best, 32, 40);
    }

    [Fact]
    public void Sugar_above_five_percent_slows_yeast()
    {
        // Marek and Bushuk, Cereal Chem. 44 (1967) 300: more gas up to 5 % of sugar, less above
        var yeast = Mass.FromGrams(1);
        var at = Temperature.FromCelsius(28);
        Assert.Equal(Model.MolesPerMinute(yeast, at, 2).Typical, Model.MolesPerMinute(yeast, at, 5).Typical);
        Assert.True(Model.MolesPerMinute(yeast, at, 12).Typical < Model.MolesPerMinute(yeast, at, 5).Typical);
    }
}
