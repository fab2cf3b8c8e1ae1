using ClassKit.Baking.Household;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Household;

/// <summary>How scales show ounces, by their division. Common practice, no source.</summary>
public sealed class OunceReadingTests
{
    [Theory]
    [InlineData(0.05, 4.62, "4.60", "4.6")]
    [InlineData(0.1, 4.62, "4.6", "4.6")]
    [InlineData(0.01, 0.286, "0.29", "0.29")]
    [InlineData(1, 8.6, "9", "9")]
    [InlineData(0.125, 4.62, "4 5/8", "4 5/8")]
    [InlineData(0.25, 4.62, "4 1/2", "4 1/2")]
    [InlineData(0.5, 4.2, "4", "4")]
    public void A_scales_division_says_how_it_reads(double division, double ounces, string weighed, string told)
    {
        var reading = OunceReading.Of(Mass.FromOunces(division));

        Assert.NotNull(reading);
        Assert.Equal((weighed, told), (reading.Show(ounces, everyDecimal: true), reading.Show(ounces, everyDecimal: false)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0.1)]
    [InlineData(5)]
    [InlineData(0.01)]
    public void A_scale_of_grams_is_not_read_in_ounces(double grams) => Assert.Null(OunceReading.Of(Mass.FromGrams(grams)));

    [Theory]
    [InlineData(20.82, 0.05, "1 lb 4.8 oz")]
    [InlineData(20.82, 0.125, "1 lb 4 7/8 oz")]
    [InlineData(15.99, 0.1, "1 lb")]
    public void Pounds_go_with_what_the_scale_shows(double ounces, double division, string text) =>
        Assert.Equal(text, PoundsAndOunces.Show(Mass.FromOunces(ounces), OunceReading.Of(Mass.FromOunces(division))!));
}
