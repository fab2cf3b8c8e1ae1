using System.Text.RegularExpressions;
using AngleSharp.Dom;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>What an instructor would see in the kitchen at any minute, told alike by the bench plan's table, the run sheets, the station lists and the drawing.</summary>
public sealed partial class OvenTruthTests
{
    /// <summary>Some minutes of one oven at one heat.</summary>
    private sealed record Told(string Oven, int From, int To, string Heat);

    private static readonly List<IElement> InstructorRows = [.. BuiltPack.Demo["run-sheets.html"].QuerySelector("[aria-labelledby=instructor]")!.QuerySelectorAll("tbody tr")];

    /// <summary>The steps in the oven, by the plan's table: the truth that everything else is held against.</summary>
    private static readonly List<Told> Steps = [.. BuiltPack.Demo["bench-plan.html"].QuerySelectorAll("table:has(.group) tbody tr:not(.group)")
        .Select(row => (Row: row, Match: AtHeat().Match(row.Children[5].Words()))).Where(found => found.Match.Success)
        .SelectMany(found => Number().Matches(found.Match.Groups["ovens"].Value)
            .Select(oven => new Told(oven.Value, PageText.Clock(found.Row.Children[1].Words()), PageText.Clock(found.Row.Children[2].Words()), found.Match.Groups["heat"].Value)))];

    [Fact]
    public void The_station_list_tells_the_heat_of_every_oven_at_every_minute_that_anything_is_in_it()
    {
        var told = BuiltPack.Demo["stations.html"].QuerySelectorAll("#ovens ~ table")[0].QuerySelectorAll("tbody tr")
            .Select(row => new Told(Number().Match(row.Children[0].Words()).Value, PageText.Clock(row.Children[1].Words()), PageText.Clock(row.Children[2].Words()), row.Children[3].Words())).ToList();

        Assert.True(Steps.Count >= 6, $"{Steps.Count}");
        foreach (var step in Steps)
        {
            for (var minute = step.From; minute < step.To; minute++)
                Assert.Equal(step.Heat, Assert.Single(told, span => span.Oven == step.Oven && span.From <= minute && minute < span.To).Heat);
        }
    }

    [Fact]
    public void The_run_sheet_sets_and_turns_every_oven_to_what_the_plan_says_of_every_minute()
    {
        var dials = InstructorRows.Select(row => (Minute: PageText.Clock(row.Children[1].Words()), Match: Dial().Match(row.Children[2].Words()))).Where(row => row.Match.Success).ToList();
        foreach (var step in Steps)
        {
            for (var minute = step.From; minute < step.To; minute++)
                Assert.Equal(step.Heat, dials.Last(dial => dial.Match.Groups["oven"].Value == step.Oven && dial.Minute <= minute).Match.Groups["heat"].Value);
        }
        // The popovers' oven is turned down amid their bake.
        Assert.Contains(dials, dial => dial.Match.Value.StartsWith("Turn", StringComparison.Ordinal));
    }

    [Fact]
    public void The_drawing_s_ovens_change_their_bars_where_the_plan_changes_their_heat()
    {
        foreach (var oven in Steps.GroupBy(step => step.Oven))
        {
            var labels = RowOf($"Oven {oven.Key}").Select(text => text.Words()).ToList();
            Assert.All(oven.Select(step => step.Heat).Distinct(), heat => Assert.Contains(labels, label => label.StartsWith(heat, StringComparison.Ordinal)));
        }
    }

    /// <summary>Whoever weighs, shows or watches finds it on a sheet at the minute of the plan.</summary>
    [Fact]
    public void Every_demonstration_stands_at_one_minute_on_every_page_that_tells_it()
    {
        var shown = BuiltPack.Demo["bench-plan.html"].QuerySelectorAll("table.fit tbody tr").Select(row => (Name: row.Children[3].Words(), From: row.Children[1].Words(), To: row.Children[2].Words())).ToList();
        Assert.Equal(4, shown.Count);
        foreach (var (name, from, to) in shown)
        {
            Assert.Contains(InstructorRows, row => row.Children[2].Words() == $"Show: {name}" && row.Children[1].Words() == from && row.Children[4].Words() == to);
            Assert.Contains(BuiltPack.Demo["stations.html"].QuerySelectorAll("#instructor ~ table")[0].QuerySelectorAll("tbody tr"), row => row.Children[0].Words() == name && row.Children[1].Words() == from);
            Assert.Contains(BuiltPack.Demo["guide.html"].QuerySelectorAll("table.timing tbody tr"), row => row.Children[2].Words().StartsWith($"Show: {name}", StringComparison.Ordinal) && row.Children[0].Words() == from && row.Children[1].Words() == to);
            // Nobody puts in, takes out or turns a dial meanwhile.
            Assert.DoesNotContain(Steps, step => (PageText.Clock(from) < step.From && step.From < PageText.Clock(to)) || (PageText.Clock(from) < step.To && step.To < PageText.Clock(to)));
        }
    }

    [Fact]
    public void Steam_is_let_out_of_popovers_that_are_out_of_their_oven_already()
    {
        var baked = BuiltPack.Demo["bench-plan.html"].QuerySelectorAll("table:has(.group) tbody tr").Where(row => row.Children[0].Words() == "8. Bake to dry").Select(row => PageText.Clock(row.Children[2].Words()));
        var shown = BuiltPack.Demo["bench-plan.html"].QuerySelectorAll("table.fit tbody tr").Single(row => row.Children[3].Words() == "Letting out the steam");
        Assert.True(baked.Min() <= PageText.Clock(shown.Children[1].Words()));
    }

    [Fact]
    public void Weighing_is_a_step_of_every_card_and_of_every_team_s_run_sheet()
    {
        var cards = BuiltPack.Demo["formula-cards.html"].QuerySelectorAll(".card");
        Assert.All(cards, card => Assert.Contains(card.QuerySelectorAll(".method strong"), name => name.Words() == "Weigh"));
        Assert.All(BuiltPack.Demo["run-sheets.html"].QuerySelectorAll(".run-sheet[aria-labelledby^=team]"), sheet =>
            Assert.Equal(cards.Length, sheet.QuerySelectorAll("tbody tr").Count(row => row.Children[2].Words() == "1. Weigh" && row.Children[5].Words().Contains("scale", StringComparison.Ordinal))));
    }

    /// <summary>The texts of a row of the drawing, which is named by its first soft text.</summary>
    private static List<IElement> RowOf(string label) =>
        [.. BuiltPack.Demo["bench-plan.html"].QuerySelectorAll("svg.timeline > g").Single(group => group.QuerySelectorAll("text.soft-text").Any(text => text.Words() == label)).QuerySelectorAll("text")];

    [GeneratedRegex(@"^oven (?<ovens>[0-9, and]+) at (?<heat>.+)$")]
    private static partial Regex AtHeat();

    [GeneratedRegex(@"^(Set|Turn) oven (?<oven>[0-9]+) to (?<heat>.+)$")]
    private static partial Regex Dial();

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Number();
}
