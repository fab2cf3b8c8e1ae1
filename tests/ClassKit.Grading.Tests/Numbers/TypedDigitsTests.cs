using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Tests.Numbers;

/// <summary>What the digits of a typed number say, by hand.</summary>
public sealed class TypedDigitsTests
{
    [Theory]
    [InlineData(12.3, 0.05)]
    [InlineData(120, 0.5)]
    [InlineData(-0.25, 0.005)]
    public void Half_of_the_last_digit_that_is_written_out(double typed, double half) =>
        Assert.Equal(half, TypedDigits.HalfOfLast(typed), 1e-12);

    [Theory]
    [InlineData(12.3, 12.349, true)]
    [InlineData(12.3, 12.25, true)]
    [InlineData(12.3, 12.36, false)]
    [InlineData(12.30001, 12.3, false)]
    [InlineData(0.0123, 0.01234, true)]
    [InlineData(0.012, 0.012, false)]
    [InlineData(12.0, 12.0, false)]
    public void A_number_is_what_a_method_gives_to_all_of_three_digits_or_more(double typed, double given, bool are) =>
        Assert.Equal(are, TypedDigits.AreThoseOf(given, typed));

    [Theory]
    [InlineData(123, 123.4, true)]
    [InlineData(123, 123.6, false)]
    [InlineData(0.123, 0.1234, true)]
    [InlineData(5, 0, false)]
    [InlineData(0, 0, true)]
    public void Three_digits_agree(double typed, double given, bool agree) => Assert.Equal(agree, TypedDigits.AgreeToThree(given, typed));
}
