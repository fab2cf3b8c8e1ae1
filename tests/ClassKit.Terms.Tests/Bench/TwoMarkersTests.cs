using ClassKit.Terms.Bench;
using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Tests.Bench;

/// <summary>Two markers who were not asked the same, because an arrangement changed in between; worked out by hand.</summary>
public sealed class TwoMarkersTests
{
    private const int Not = BenchScale.NotAsked;

    private static readonly BenchScale Scale = new([("Safe", 2), ("Mixing", 1)], [0, 1, 2], ["Not yet", "Secure", "Excellent"]);

    [Theory]
    // Safe alone was asked by both: 2 x (2 + 1) / 2 of 4.
    [InlineData(new[] { 2, Not }, new[] { 1, 2 }, 3, 4)]
    [InlineData(new[] { 2, 2 }, new[] { 1, 0 }, 4, 6)]
    public void What_both_were_asked_counts(int[] first, int[] second, int points, int outOf)
    {
        var mark = Assert.Single(Seen(first, second)).Mark;

        Assert.Equal((points, outOf), (mark.Points, mark.OutOf));
    }

    [Theory]
    [InlineData(new[] { 2, Not }, new[] { Not, 2 })]
    [InlineData(new[] { Not, Not }, new[] { 1, 2 })]
    [InlineData(new[] { Not, Not }, new[] { Not, Not })]
    public void Nothing_in_common_is_no_mark_and_stops_nobody_elses(int[] first, int[] second) =>
        Assert.Equal(["ben"], Seen(first, second, [2, 2]).Select(mark => mark.Student));

    private static List<(string Student, Terms.Marks.Mark Mark)> Seen(int[] first, int[] second, int[]? ben = null)
    {
        var one = new Dictionary<string, IReadOnlyList<int>> { ["ada"] = first };
        if (ben is not null)
            one["ben"] = ben;
        return
        [
            .. new BenchMarking(Scale, new("Kim", one), new("Lou", new Dictionary<string, IReadOnlyList<int>> { ["ada"] = second })).Marks(
                MarkerRule.Mean
            ),
        ];
    }
}
