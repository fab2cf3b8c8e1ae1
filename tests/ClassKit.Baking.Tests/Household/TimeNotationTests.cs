using ClassKit.Baking.Household;
using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.Household;

public sealed class TimeNotationTests
{
    [Theory]
    [InlineData("45 min", 45)]
    [InlineData("1 h 15 min", 75)]
    [InlineData("1h15min", 75)]
    [InlineData("1:15", 75)]
    [InlineData("1 1/2 h", 90)]
    [InlineData("½ hour", 30)]
    [InlineData("90 minutes", 90)]
    [InlineData("2 hrs", 120)]
    public void Times_are_read(string text, double minutes)
    {
        Assert.True(TimeNotation.TryParse(text, out var time));
        Assert.Equal(minutes, time.TotalMinutes, 1e-9);
    }

    [Theory]
    [InlineData("")]
    [InlineData("45")]
    [InlineData("1:75")]
    [InlineData("-5 min")]
    [InlineData("soon")]
    [InlineData("15 min 1 h")]
    [InlineData("99999 h")]
    public void Other_texts_are_no_times(string text) => Assert.False(TimeNotation.TryParse(text, out _));

    [Fact]
    public void Times_read_back_as_they_were_written() =>
        Gen.Int[0, 20_000]
            .Sample(minutes =>
            {
                Assert.True(TimeNotation.TryParse(TimeNotation.Show(TimeSpan.FromMinutes(minutes)), out var back));
                Assert.Equal(minutes, back.TotalMinutes, 1e-9);
            });

    [Fact]
    public void Masses_read_back_as_they_were_written() =>
        Gen.Double[0.01, 99_999]
            .Sample(grams =>
            {
                var text = MassNotation.Show(Mass.FromGrams(grams));
                Assert.True(MassNotation.TryParse(text, out var back));
                Assert.Equal(
                    grams,
                    back.Grams,
                    grams switch
                    {
                        < 1 => 0.0005,
                        < 10 => 0.005,
                        < 100 => 0.05,
                        _ => 0.5,
                    } * 1.001
                );
                Assert.Equal(text, MassNotation.Show(back));
            });

    [Theory]
    [InlineData(390, "390 g")]
    [InlineData(1340, "1.34 kg")]
    [InlineData(0.25, "0.25 g")]
    [InlineData(999.999, "1 kg")]
    public void Masses_are_shown(double grams, string text) => Assert.Equal(text, MassNotation.Show(Mass.FromGrams(grams)));
}
