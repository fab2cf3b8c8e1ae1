using ClassKit.Terms.Bench;

namespace ClassKit.Terms.Tests.Bench;

/// <summary>Two sheets put together student by student, worked out by hand: neither loses what the other one does not have.</summary>
public sealed class BenchMergeTests
{
    private static readonly BenchForm Form = new(
        "Bench",
        new([("Safe", 2), ("Mixing", 1)], [0, 1, 2], ["Not yet", "Secure", "Excellent"]),
        [
            ["a", "b", "c"],
            ["d", "e", "f"],
        ],
        "Class",
        [new("ada", "Ada"), new("ben", "Ben"), new("cleo", "Cleo"), new("dan", "Dan")],
        2
    );

    private static readonly BenchSheet Typed = new(
        "typed",
        new Dictionary<string, IReadOnlyList<int>> { ["ada"] = [0, 1], ["cleo"] = [2, 2] }
    )
    {
        Begun = new Dictionary<string, IReadOnlyList<int?>> { ["ben"] = [1, null] },
        Comments = new Dictionary<string, string> { ["cleo"] = "neat", ["ada"] = "knife left on the bench" },
    };

    private static readonly BenchSheet TeamOne = new(
        "Kim",
        new Dictionary<string, IReadOnlyList<int>>
        {
            ["ada"] = [2, 1],
            ["ben"] = [1, 2],
            ["dan"] = [2, 2],
        }
    )
    {
        Comments = new Dictionary<string, string> { ["ada"] = "well done" },
    };

    [Theory]
    [InlineData(false, "ada 0 1")]
    [InlineData(true, "ada 2 1")]
    public void Who_stands_on_one_sheet_alone_keeps_it_and_what_differs_is_named(bool replaces, string ada)
    {
        var merged = BenchMerge.Of(Form, Typed, TeamOne, new HashSet<string> { "dan" }, replaces);

        Assert.Equal(
            [ada, "ben 1 2", "cleo 2 2"],
            merged.Sheet.Places.OrderBy(one => one.Key).Select(one => $"{one.Key} {string.Join(' ', one.Value)}")
        );
        Assert.Empty(merged.Sheet.Begun);
        Assert.Equal([new DifferingLevel(Form.Students[0], 0, 0, 2)], merged.Differing);
        Assert.Equal(["dan"], merged.Away.Select(student => student.Id));
        Assert.Equal(("neat", "knife left on the bench well done"), (merged.Sheet.Comments["cleo"], merged.Sheet.Comments["ada"]));
    }

    [Fact]
    public void The_same_sheet_again_changes_nothing()
    {
        var merged = BenchMerge.Of(Form, Typed, Typed, new HashSet<string>(), replaces: true);

        Assert.Empty(merged.Differing);
        Assert.Equal(Typed.Places.Keys.Order(), merged.Sheet.Places.Keys.Order());
        Assert.Equal([1, null], merged.Sheet.Begun["ben"]);
        Assert.Equal(Typed.Comments, merged.Sheet.Comments);
    }
}
