using ClassKit.Grading.Statistics;

namespace ClassKit.Grading.Tests.Statistics;

/// <summary>Where a statistic is undefined it is missing: neither 0 nor a number that means nothing.</summary>
public class UndefinedStatisticsTests
{
    [Fact]
    public void An_item_that_everybody_has_right_has_a_difficulty_and_no_correlation()
    {
        var statistics = ItemStatistics.Of(
            new(
                [1, 2],
                [
                    [1, 0],
                    [1, 2],
                    [1, 1],
                ]
            )
        );
        Assert.Equal(1, statistics[0].Difficulty);
        Assert.Null(statistics[0].WithTotal);
        Assert.Null(statistics[0].WithRest);
        Assert.Equal(0.5, statistics[1].Difficulty);
    }

    [Fact]
    public void Nothing_is_reliable_or_not_where_nobody_differs()
    {
        ScoreTable table = new(
            [1, 1],
            [
                [1, 0],
                [0, 1],
                [1, 0],
            ]
        );
        Assert.Null(Reliability.Of(table));
        Assert.All(ItemStatistics.Of(table), item => Assert.Null(item.Discrimination));
    }

    [Fact]
    public void One_student_or_one_item_has_no_reliability()
    {
        Assert.Null(
            Reliability.Of(
                new(
                    [1, 1],
                    [
                        [1, 0],
                    ]
                )
            )
        );
        Assert.Null(
            Reliability.Of(
                new(
                    [1],
                    [
                        [1],
                        [0],
                    ]
                )
            )
        );
    }

    [Fact]
    public void A_table_without_students_has_items_without_statistics()
    {
        Assert.Null(Reliability.Of(new([1, 1], [])));
        Assert.All(ItemStatistics.Of(new([1, 1], [])), item => Assert.Equal(new(null, null, null, null, null) { Asked = 0 }, item));
    }

    [Fact]
    public void The_order_of_students_changes_nothing()
    {
        decimal[][] rows =
        [
            [1, 0, 1],
            [0, 0, 1],
            [1, 1, 1],
            [0, 1, 0],
            [1, 0, 0],
            [1, 1, 0],
            [0, 0, 0],
        ];
        var forward = ItemStatistics.Of(new([1, 1, 1], rows));
        var backward = ItemStatistics.Of(new([1, 1, 1], [.. rows.Reverse()]));
        Assert.All(forward.Zip(backward), pair => Assert.Equal(pair.First.Discrimination!.Value, pair.Second.Discrimination!.Value, 1e-12));
    }
}
