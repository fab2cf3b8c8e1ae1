using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.Tests.Yeast;

public sealed class EquivalentScheduleTests
{
    [Fact]
    public void Ten_percent_a_degree_makes_60_minutes_at_25_C_37_at_30()
    {
        // Sosland Publishing, Bake, "The science of fermentation": 1 °C is about 10 %; 60 / 1.1^5 = 37.26
        var minutes = EquivalentSchedule
            .Minutes(60, Temperature.FromCelsius(25), Temperature.FromCelsius(30), 1, YeastGasModel.Default)
            .Value;
        Assert.Equal(37.26, minutes.Typical, 0.005);
        Assert.True(minutes.Low <= minutes.Typical && minutes.Typical < minutes.High);
    }

    [Fact]
    public void Half_the_yeast_takes_twice_as_long() =>
        Assert.Equal(
            120,
            EquivalentSchedule.Minutes(60, Temperature.FromCelsius(27), Temperature.FromCelsius(27), 0.5, YeastGasModel.Default).Value.High,
            1e-9
        ); // by hand

    [Fact]
    public void There_and_back_is_the_same_time()
    {
        var cold = EquivalentSchedule.Minutes(60, Temperature.FromCelsius(27), Temperature.FromCelsius(5), 1, YeastGasModel.Default).Value;
        Assert.Equal(
            60,
            EquivalentSchedule
                .Minutes(cold.Typical, Temperature.FromCelsius(5), Temperature.FromCelsius(27), 1, YeastGasModel.Default)
                .Value.Typical,
            1e-9
        );
        Assert.True(cold.Low > 60);
    }

    [Theory]
    [InlineData(60, 27, 60, 1, "yeast-idle")]
    [InlineData(60, 27, -5, 1, "yeast-idle")]
    [InlineData(0, 27, 27, 1, "no-time")]
    [InlineData(60, 27, 27, 0, "no-yeast")]
    public void What_cannot_rise_is_explained(double minutes, double known, double planned, double ratio, string code) =>
        Assert.Equal(
            code,
            EquivalentSchedule
                .Minutes(minutes, Temperature.FromCelsius(known), Temperature.FromCelsius(planned), ratio, YeastGasModel.Default)
                .Why!.Code
        );
}
