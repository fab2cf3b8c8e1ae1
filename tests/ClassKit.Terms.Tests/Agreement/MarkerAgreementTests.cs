using ClassKit.Terms.Agreement;
using ClassKit.Terms.Bench;

namespace ClassKit.Terms.Tests.Agreement;

public sealed class MarkerAgreementTests
{
    private static readonly BenchScale Scale = new(
        [("Safety", 2), ("Mixing", 1)],
        [0, 1, 2, 3],
        ["Not yet", "Developing", "Secure", "Excellent"]
    );

    private static readonly MarkerAgreement Compared = MarkerAgreement.Of(
        "Day one",
        new(
            Scale,
            new(
                "first",
                new Dictionary<string, IReadOnlyList<int>>
                {
                    ["ada"] = [2, 2],
                    ["ben"] = [3, 1],
                    ["cleo"] = [1, 1],
                    ["dan"] = [0, 0],
                }
            ),
            new(
                "second",
                new Dictionary<string, IReadOnlyList<int>>
                {
                    ["ada"] = [2, 3],
                    ["ben"] = [3, 1],
                    ["cleo"] = [3, 0],
                    ["eve"] = [1, 1],
                }
            )
        )
    );

    [Fact]
    public void Only_who_was_marked_by_both_is_compared()
    {
        Assert.Equal(3, Compared.Students);
        Assert.Equal(["dan", "eve"], Compared.OnlyOne);
    }

    /// <summary>By hand: Ada 6 and 7 points, Ben 7 and 7, Cleo 3 and 6.</summary>
    [Fact]
    public void Who_differs_most_stands_first_with_where()
    {
        Assert.Equal([("cleo", 3m, 6m), ("ada", 6m, 7m)], Compared.Apart.Select(pair => (pair.Student, pair.First, pair.Second)));
        Assert.Equal([("Safety", 1, 3), ("Mixing", 1, 0)], Compared.Apart[0].Criteria);
        Assert.Equal(4 / 3m, Compared.MeanDifference);
    }

    /// <summary>
    /// By hand: Mixing was left out for Cleo, for both or while one was marking already. Of Ada and Ben one has the same level; Cleo has 2
    /// and 6 points.
    /// </summary>
    [Theory]
    [InlineData(BenchScale.NotAsked)]
    [InlineData(1)]
    public void What_a_student_was_not_asked_is_compared_and_counted_by_nobody(int firstOfCleo)
    {
        var compared = MarkerAgreement.Of(
            "Day one",
            new(
                Scale,
                new(
                    "first",
                    new Dictionary<string, IReadOnlyList<int>>
                    {
                        ["ada"] = [2, 2],
                        ["ben"] = [3, 1],
                        ["cleo"] = [1, firstOfCleo],
                    }
                ),
                new(
                    "second",
                    new Dictionary<string, IReadOnlyList<int>>
                    {
                        ["ada"] = [2, 3],
                        ["ben"] = [3, 1],
                        ["cleo"] = [3, BenchScale.NotAsked],
                    }
                )
            )
        );

        Assert.Equal(
            [("Safety", 3, 2), ("Mixing", 2, 1)],
            compared.Criteria.Select(criterion => (criterion.Criterion, criterion.Students, criterion.Same))
        );
        Assert.Equal(("cleo", 2m, 6m), (compared.Apart[0].Student, compared.Apart[0].First, compared.Apart[0].Second));
    }

    [Fact]
    public void Criteria_are_counted_one_by_one()
    {
        Assert.Equal(
            [("Safety", 2, 1), ("Mixing", 1, 0)],
            Compared.Criteria.Select(criterion => (criterion.Criterion, criterion.Same, criterion.Further))
        );
        Assert.Equal([2 / 3.0, 0], Compared.Criteria.Select(criterion => criterion.MeanDifference));
    }
}
