using ClassKit.Exercises.Effort;
using ClassKit.Exercises.Tests.Guarantees;

namespace ClassKit.Exercises.Tests.Effort;

public sealed class EffortMeasureTests
{
    private static int Of(string key, decimal flour, decimal share, double answer) =>
        EffortMeasure.Of(
            new(
                Asked.Exercise(Asked.Part("p", key)),
                new Dictionary<string, decimal> { ["flour"] = flour, ["share"] = share },
                new Dictionary<string, double> { ["p"] = answer }
            )
        );

    /// <summary>Counted by hand: digits of 500 (1), 0.2 (1) and 100 (1), one operation, and 5 × 2 = 10 carries once.</summary>
    [Fact]
    public void A_round_product_is_little_work() => Assert.Equal(1 + 1 + 1 + 1 + 1, Of("=flour*share", 500, 0.2m, 100));

    /// <summary>
    /// Counted by hand: digits of 650 (2), 0.15 (2) and 97.5 (3); one operation; 65 × 15 has rows 65 × 5 = 325 (carries 2, 3) and 65 × 1 =
    /// 65 (none), and 325 + 650 = 975 carries nowhere.
    /// </summary>
    [Fact]
    public void Digits_and_carries_make_more_of_it() => Assert.Equal(2 + 2 + 3 + 1 + 2, Of("=flour*share", 650, 0.15m, 97.5));

    /// <summary>Counted by hand: digits of 750 (2), 0.3 (1, drawn though not used) and 999 (3); 750 + 249 = 999 carries nowhere.</summary>
    [Fact]
    public void A_sum_without_a_carry_counts_its_operation_only() => Assert.Equal(2 + 1 + 3 + 1, Of("=flour+249", 750, 0.3m, 999));

    /// <summary>Counted by hand: digits 2, 1 and 4; 750 + 258 carries at the tens and the hundreds.</summary>
    [Fact]
    public void Every_carry_of_a_sum_counts() => Assert.Equal(2 + 1 + 4 + 1 + 2, Of("=flour+258", 750, 0.3m, 1008));

    /// <summary>
    /// Counted by hand: 1000 - 750 = 250 borrows where its check 250 + 750 carries: at the tens and the hundreds. Digits 2, 1 and 2.
    /// </summary>
    [Fact]
    public void A_difference_borrows_where_its_check_carries() => Assert.Equal(2 + 1 + 2 + 1 + 2, Of("=1000-flour", 750, 0.3m, 250));

    /// <summary>Counted by hand: 750 / 0.3 = 2500 is checked by 25 × 3 = 75, with one carry; digits 2, 1 and 2.</summary>
    [Fact]
    public void A_quotient_counts_as_its_check() => Assert.Equal(2 + 1 + 2 + 1 + 1, Of("=flour/share", 750, 0.3m, 2500));
}
