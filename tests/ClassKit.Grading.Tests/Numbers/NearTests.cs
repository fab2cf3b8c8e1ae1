using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Tests.Numbers;

/// <summary>One idea of the same number, whoever asks and whichever number is named first.</summary>
/// <remarks>The noise that is allowed, a billionth, and both floors are conventions of ours; each line follows from them by hand.</remarks>
public sealed class NearTests
{
    private static readonly double[] Numbers =
    [
        0,
        5e-324,
        1e-17,
        1e-16,
        1.0001e-15,
        1e-9,
        1.0000000011e-9,
        1e-6,
        1.000000001e-6,
        0.65,
        0.6500000007,
        1,
        1.0000000009,
        1.0000000011,
        1e9,
        1e9 + 1,
        1e9 + 1.5,
        1e300,
        double.MaxValue,
        double.PositiveInfinity,
        double.NaN,
    ];

    public static TheoryData<string> Scales => [nameof(Near.Computed), nameof(Near.Written)];

    [Theory]
    [MemberData(nameof(Scales))]
    public void It_does_not_matter_which_number_is_named_first(string scale)
    {
        var near = Of(scale);

        foreach (var one in Numbers)
        {
            foreach (var other in Numbers)
            {
                Assert.True(near.Same(one, other) == near.Same(other, one), $"{one:R} and {other:R}");
                Assert.True(near.Same(one, other) == near.Same(-one, -other), $"{one:R} and {other:R} below 0");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Scales))]
    public void A_number_is_itself_and_nothing_is_like_what_is_no_number(string scale)
    {
        Assert.All(Numbers.Where(double.IsFinite), number => Assert.True(Of(scale).Same(number, number)));
        Assert.All(Numbers, number => Assert.False(Of(scale).Same(number, double.NaN)));
        Assert.All(Numbers, number => Assert.False(Of(scale).Same(number, double.PositiveInfinity)));
    }

    [Theory]
    [InlineData(nameof(Near.Computed), 0.65, 0.6500000006, true)]
    [InlineData(nameof(Near.Computed), 0.65, 0.6500000007, false)]
    [InlineData(nameof(Near.Written), 0.65, 0.6500000009, true)]
    [InlineData(nameof(Near.Written), 0.65, 0.6500000011, false)]
    [InlineData(nameof(Near.Computed), 0.0, 0.9e-15, true)]
    [InlineData(nameof(Near.Computed), 0.0, 1.1e-15, false)]
    [InlineData(nameof(Near.Written), 0.0, 0.9e-9, true)]
    [InlineData(nameof(Near.Written), 0.0, 1.1e-9, false)]
    [InlineData(nameof(Near.Computed), 1e9, 1e9 + 0.9, true)]
    [InlineData(nameof(Near.Written), 1e9, 1e9 + 1.1, false)]
    public void What_is_told_apart_follows_from_the_floor(string scale, double one, double other, bool same) =>
        Assert.Equal(same, Of(scale).Same(one, other));

    [Fact]
    public void The_last_bits_of_a_sum_are_noise_and_a_thousandth_of_a_gram_is_not()
    {
        Assert.True(Near.Computed.Same(0.1 + 0.2, 0.3));
        Assert.False(Near.Computed.Same(0.0004, 0.000401));
    }

    [Fact]
    public void Rows_are_one_number_by_number()
    {
        Assert.True(Near.Computed.Same([0.3, 2], [0.1 + 0.2, 2]));
        Assert.False(Near.Computed.Same([0.3, 2], [0.3, 2.1]));
        Assert.False(Near.Computed.Same([0.3, 2], [0.3]));
        Assert.True(Near.Computed.AllSame([0.3, 0.1 + 0.2]));
        Assert.False(Near.Computed.AllSame([0.3, 0.3, 0.4]));
        Assert.True(Near.Computed.AllSame([]));
    }

    private static Near Of(string scale) => scale == nameof(Near.Computed) ? Near.Computed : Near.Written;
}
