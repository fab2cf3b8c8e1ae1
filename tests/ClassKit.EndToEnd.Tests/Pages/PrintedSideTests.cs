namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>A heading alone and a last side for a line are seen where they are.</summary>
public class PrintedSideTests
{
    private const string Printed =
        "Title\none\ntwo\nthree\n  What   next\n\fTitle · class\na\nb\nc\nd\n2 / 3\n\fTitle · class\nMade with ClassKit.\n3 / 3\n\f";

    [Fact]
    public void A_heading_at_the_foot_and_a_nearly_empty_last_side_are_seen() =>
        Assert.Equal(
            ["side 1 of 3 ends with the heading “What next”", "the last of 3 sides holds 1 lines: “Made with ClassKit.”"],
            PrintedSide.Of(Printed).SelectMany(side => side.Faults(["Title", "What next"]))
        );

    [Fact]
    public void A_heading_with_something_under_it_is_none() =>
        Assert.Empty(PrintedSide.Of("Title\nWhat next\nthis\n\fa\nb\nc\nd\n\f").SelectMany(side => side.Faults(["Title", "What next"])));
}
