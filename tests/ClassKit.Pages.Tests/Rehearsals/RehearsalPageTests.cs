using AngleSharp.Dom;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Rehearsals;

public sealed class RehearsalPageTests
{
    private static readonly IDocument Page = Html.Parse(HtmlPages.Rehearsal(SampleRehearsal.Report));

    private static string Section(string id) => Page.QuerySelector($"#{id}")!.Closest("section")!.Text();

    [Fact]
    public void It_counts_wrong_turns_acted_out_and_named()
    {
        // Six parts with three acted out and two named in each; the later parts of an exercise name one wrongly and two.
        Assert.Contains(
            "18 answers acted out a known wrong turn, and 12 of them were named.",
            Section("misconceptions"),
            StringComparison.Ordinal
        );
        Assert.Contains("4 right answers were taken for one", Section("misconceptions"), StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_what_could_not_be_told_from_what_and_for_how_many()
    {
        var rows = Page.QuerySelector("#misconceptions")!
            .Closest("section")!
            .QuerySelectorAll("tbody tr")
            .Select(row => row.Text())
            .ToList();
        Assert.Equal(2, rows.Count);
        Assert.EndsWith(
            "The friction of the mixer is missing. You took the desired temperature twice. There are three factors, so it counts three times. 2 of 12 31.5 °C",
            rows[0],
            StringComparison.Ordinal
        );
        Assert.EndsWith("the right method, carried on 1 of 12 512 g", rows[1], StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_how_long_the_set_takes_and_that_nobody_measured_it()
    {
        // Exercises of 6, 8 and 5 minutes; students who take 10, 20, ..., 120.
        Assert.Contains(
            "state 19 min together. Half of this class is done after 60 min, nine in ten after 110 min, and the slowest after 120 min.",
            Section("time"),
            StringComparison.Ordinal
        );
        Assert.Contains("not a measurement", Section("time"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_one_half_was_not_asked_is_not_said_to_tell_students_apart() =>
        Assert.Contains("75 % – – too few were asked", Section("parts"), StringComparison.Ordinal);
}
