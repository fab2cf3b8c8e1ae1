using ClassKit.Terms.Bench;
using ClassKit.Terms.Rules;
using ClassKit.Wording.Terms;

namespace ClassKit.Wording.Tests.Terms;

/// <summary>What a student reads of points that were earned at the bench: enough to work them out again. Numbers by hand.</summary>
public sealed class BenchWordsTests
{
    private static readonly BenchScale Scale = new(
        [("Safety", 3), ("Weighing", 2), ("Rubbing in", 1.5m)],
        [0, 1, 3],
        ["None", "Some", "All"]
    );

    private static readonly BenchMarking Marked = new(
        Scale,
        new(
            "first",
            new Dictionary<string, IReadOnlyList<int>>
            {
                ["ada"] = [0, 1, 2],
                ["ben"] = [2, BenchScale.NotAsked, 1],
                ["cleo"] = [1, 1, 1],
            }
        ),
        new("second", new Dictionary<string, IReadOnlyList<int>> { ["ada"] = [1, 1, 2], ["ben"] = [2, BenchScale.NotAsked, 2] })
    );

    [Theory]
    [InlineData(
        "ada",
        "The mean of two markers. Safety: “None” and “Some”, 1.5 of 9; Weighing: “Some”, 2 of 6; Rubbing in: “All”, 4.5 of 4.5."
    )]
    [InlineData("ben", "The mean of two markers. Safety: “All”, 9 of 9; Rubbing in: “Some” and “All”, 3 of 4.5.")]
    [InlineData("cleo", "Safety: “Some”, 3 of 9; Weighing: “Some”, 2 of 6; Rubbing in: “Some”, 1.5 of 4.5.")]
    public void Every_criterion_says_its_levels_and_what_they_earned(string student, string said) =>
        Assert.Equal(said, WorkWords.Criteria(Marked.Marks(MarkerRule.Mean).Single(mark => mark.Student == student).Mark));

    [Fact]
    public void What_criteria_earned_comes_to_the_mark() =>
        Assert.All(Marked.Marks(MarkerRule.Mean).Concat(Marked.Marks(MarkerRule.First)), one =>
            Assert.Equal(
                (Math.Round(one.Mark.Points, 12), one.Mark.OutOf),
                (
                    Math.Round(one.Mark.Criteria.Sum(criterion => criterion.Share * criterion.OutOf), 12),
                    one.Mark.Criteria.Sum(criterion => criterion.OutOf)
                )
            )
        );

    [Fact]
    public void Work_that_was_not_marked_by_levels_says_nothing_of_them() =>
        Assert.Empty(WorkWords.Criteria(ClassKit.Terms.Marks.Mark.Of(7, 10)));
}
