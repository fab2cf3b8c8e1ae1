using ClassKit.Desk.Progress;

namespace ClassKit.Desk.Tests.Progress;

/// <summary>What came of a job is folded only where many lines belong to one.</summary>
public sealed class LineGroupTests
{
    private static readonly string[] Many = [.. Enumerable.Range(1, 12).Select(at => $"On paper, line {at}")];

    [Fact]
    public void Many_lines_of_their_own_never_disappear_behind_the_first()
    {
        var group = Assert.Single(LineGroup.Of(["The work of 13 of 17 students is marked.", .. Many]));
        Assert.False(group.IsFolded);
        Assert.Equal(13, group.Lines.Count);
    }

    [Fact]
    public void Many_lines_that_belong_to_one_are_folded_under_it_and_what_stands_around_is_not()
    {
        string[] lines = ["Before", "Twelve cells", .. Many.Select(line => "  " + line), "Behind", "  of it"];
        var groups = LineGroup.Of(lines);
        Assert.Equal([(1, false), (13, true), (2, false)], groups.Select(group => (group.Lines.Count, group.IsFolded)));
        Assert.Equal("Twelve cells", groups[1].Lines[0]);
        Assert.Equal(lines, groups.SelectMany(group => group.Lines));
    }
}
