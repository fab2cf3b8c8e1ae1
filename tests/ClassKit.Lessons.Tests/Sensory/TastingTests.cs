using ClassKit.Exercises.Randomness;
using ClassKit.Lessons.Sensory;

namespace ClassKit.Lessons.Tests.Sensory;

public sealed class TastingTests
{
    public static TheoryData<int> Seats => [0, 1, 5, 6, 24, 25, Tasting.MostSeats];

    [Theory]
    [MemberData(nameof(Seats))]
    public void Every_order_is_served_about_equally_often_and_the_odd_one_is_the_one_that_is_alone(int seats)
    {
        var servings = Of(seats, 1).Servings;

        Assert.Equal(Enumerable.Range(1, seats), servings.Select(serving => serving.Seat));
        Assert.All(TriangleServing.Orders, order =>
            Assert.InRange(servings.Count(serving => serving.Order == order), seats / 6, (seats + 5) / 6)
        );
        Assert.All(servings, serving =>
        {
            var odd = serving.Order[serving.Codes.ToList().IndexOf(serving.Odd)];
            Assert.Single(serving.Order, odd);
        });
    }

    [Theory]
    [MemberData(nameof(Seats))]
    public void Codes_have_three_digits_and_no_plate_bears_one_twice(int seats)
    {
        foreach (var serving in Of(seats, 2).Servings)
        {
            Assert.All(serving.Codes, code => Assert.InRange(code, 100, 999));
            Assert.Distinct(serving.Codes);
        }
    }

    [Fact]
    public void No_code_is_used_twice_and_beyond_the_most_seats_people_take_turns()
    {
        var servings = Of(10_000, 3).Servings;

        Assert.Equal(Tasting.MostSeats, servings.Count);
        Assert.Distinct(servings.SelectMany(serving => serving.Codes));
    }

    [Fact]
    public void The_same_seed_draws_the_same_and_another_one_does_not()
    {
        Assert.Equal(Codes(4), Codes(4));
        Assert.NotEqual(Codes(4), Codes(5));

        static IEnumerable<int> Codes(ulong seed) => Of(12, seed).Servings.SelectMany(serving => serving.Codes);
    }

    private static Tasting Of(int seats, ulong seed) => Tasting.For([], seats, SeededDraws.For(seed, "tasting"));
}
