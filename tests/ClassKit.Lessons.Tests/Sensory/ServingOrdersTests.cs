using ClassKit.Exercises.Randomness;
using ClassKit.Lessons.Sensory;

namespace ClassKit.Lessons.Tests.Sensory;

/// <summary>E. J. Williams, Aust. J. Sci. Res. A 2 (1949) 149–168: what balance means, counted.</summary>
public sealed class ServingOrdersTests
{
    public static TheoryData<int> Numbers => [2, 3, 4, 5, 6, 7];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Every_sample_stands_in_every_place_and_behind_every_other_equally_often(int samples)
    {
        var block = ServingOrders.Block(samples);

        Assert.Equal(samples % 2 == 0 ? samples : 2 * samples, block.Count);
        Assert.All(block, order => Assert.Equal(Enumerable.Range(0, samples), order.Order()));
        foreach (var place in Enumerable.Range(0, samples))
            Assert.All(block.CountBy(order => order[place]), count => Assert.Equal(block.Count / samples, count.Value));
        var followed = block.SelectMany(order => order.Zip(order.Skip(1))).CountBy(pair => pair).ToList();
        Assert.Equal(samples * (samples - 1), followed.Count);
        Assert.Single(followed.Select(count => count.Value).Distinct());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void One_sample_has_one_order(int samples) =>
        Assert.Equal(Enumerable.Range(0, samples), Assert.Single(ServingOrders.Block(samples)));

    /// <summary>A class of 24 tastes three breads: each of the six orders four times.</summary>
    [Fact]
    public void The_seats_of_a_class_share_the_orders_out_evenly()
    {
        var formulas = Packs.SampleLesson.Lesson.Formulas.Take(3).ToList();
        var tasting = Tasting.For(formulas, 24, SeededDraws.For(1, "tasting"));

        Assert.Equal(Enumerable.Range(1, 24), tasting.Plates.Select(plate => plate.Seat));
        Assert.All(tasting.Plates.CountBy(plate => plate.Codes[0]), first => Assert.Equal(24 / formulas.Count, first.Value));
        Assert.Equal(tasting.Plates.Count > 1, tasting.Plates.Select(plate => string.Join(' ', plate.Codes)).Distinct().Count() > 1);
    }

    /// <summary>ISO 4120: of three samples one or two are A, over all six orders as many as B.</summary>
    [Fact]
    public void As_many_bites_are_cut_of_one_product_as_of_the_other()
    {
        var tasting = Tasting.For([], 24, SeededDraws.For(1, "tasting"));
        Assert.Equal((36, 36), (tasting.Bites('A'), tasting.Bites('B')));
    }

    [Theory]
    [InlineData(25, 10, 10, 5)]
    [InlineData(20, 8, 8, 4)]
    public void The_minutes_of_a_tasting_are_shared_out(int minutes, int measuring, int blind, int talking)
    {
        var course = TastingCourse.Of(120, minutes);
        Assert.Equal(
            (120 + measuring, 120 + measuring + blind, 120 + measuring + blind + talking),
            (course.BlindFrom!.Value, course.TalkFrom, course.To)
        );
        Assert.Null(TastingCourse.Of(120, 10).BlindFrom);
    }
}
