using System.Text.RegularExpressions;
using AngleSharp.Dom;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>
/// What an instructor would see in the kitchen at any minute, told alike by the bench plan's table, the run sheets, the station lists and
/// the drawing.
/// </summary>
public sealed partial class OvenTruthTests
{
    /// <summary>Some minutes of one oven at one heat.</summary>
    private sealed record Told(string Oven, int From, int To, string Heat);

    public static TheoryData<string> All => Kitchens.All;

    public static TheoryData<string> OfThreeLifts => Kitchens.OfThreeLifts;

    [Theory]
    [MemberData(nameof(All))]
    public void The_station_list_tells_the_heat_of_every_oven_at_every_minute_that_anything_is_in_it(string kitchen)
    {
        var told = Kitchens
            .Of(kitchen)["stations.html"]
            .QuerySelectorAll("#ovens ~ .wide table")[0]
            .QuerySelectorAll("tbody tr")
            .Select(row => new Told(
                Number().Match(row.Children[0].Words()).Value,
                PageText.Clock(row.Children[1].Words()),
                PageText.Clock(row.Children[2].Words()),
                row.Children[3].Words()
            ))
            .ToList();

        foreach (var step in Steps(kitchen))
        {
            for (var minute = step.From; minute < step.To; minute++)
                Assert.Equal(
                    step.Heat,
                    Assert.Single(told, span => span.Oven == step.Oven && span.From <= minute && minute < span.To).Heat
                );
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_run_sheet_sets_and_turns_every_oven_to_what_the_plan_says_of_every_minute(string kitchen)
    {
        var dials = InstructorRows(kitchen)
            .Select(row => (Minute: row.MinuteUnder("At"), Match: Dial().Match(row.Under("What"))))
            .Where(row => row.Match.Success)
            .ToList();
        foreach (var step in Steps(kitchen))
        {
            for (var minute = step.From; minute < step.To; minute++)
                Assert.Equal(
                    step.Heat,
                    dials
                        .Last(dial =>
                            Number().Matches(dial.Match.Groups["ovens"].Value).Any(oven => oven.Value == step.Oven) && dial.Minute <= minute
                        )
                        .Match.Groups["heat"]
                        .Value
                );
        }
    }

    /// <summary>The popovers' oven is turned down amid their bake.</summary>
    [Theory]
    [MemberData(nameof(OfThreeLifts))]
    public void An_oven_that_is_turned_down_with_bread_in_it_is_turned_and_not_set(string kitchen) =>
        Assert.Contains(InstructorRows(kitchen), row => row.Under("What").StartsWith("Turn ", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(All))]
    public void The_drawing_s_ovens_change_their_bars_where_the_plan_changes_their_heat(string kitchen)
    {
        foreach (var oven in Steps(kitchen).GroupBy(step => step.Oven))
        {
            var labels = RowOf(kitchen, oven.Key).Select(text => text.Words()).ToList();
            Assert.All(oven.Select(step => step.Heat).Distinct(), heat =>
                Assert.Contains(labels, label => label.StartsWith(heat, StringComparison.Ordinal))
            );
        }
    }

    /// <summary>
    /// Whoever weighs, shows or watches finds it on a sheet at the minute of the plan, and nobody sees to an oven meanwhile.
    /// </summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Every_demonstration_stands_at_one_minute_on_every_page_that_tells_it(string kitchen)
    {
        var pack = Kitchens.Of(kitchen);
        var steps = Steps(kitchen);
        var shown = pack["bench-plan.html"]
            .QuerySelectorAll("table.fit tbody tr")
            .Select(row => (Name: row.Under("What is shown"), From: row.Under("From"), To: row.Under("To")))
            .ToList();
        Assert.True(shown.Count >= 3);
        foreach (var (name, from, to) in shown)
        {
            var (begins, ends) = (PageText.Clock(from), PageText.Clock(to));
            Assert.Contains(InstructorRows(kitchen), row =>
                row.Under("What") == $"Show: {name}" && row.MinuteUnder("At") == begins && row.MinuteUnder("Until") == ends
            );
            Assert.All(pack["run-sheets.html"].QuerySelectorAll(".run-sheet[aria-labelledby^=team]"), sheet =>
                Assert.Contains(sheet.QuerySelectorAll("tbody tr"), row =>
                    row.Under("What") == $"Watch: {name}" && row.MinuteUnder("At") == begins && row.MinuteUnder("Until") == ends
                )
            );
            Assert.Contains(pack["stations.html"].QuerySelectorAll("#instructor ~ .wide table")[0].QuerySelectorAll("tbody tr"), row =>
                row.Children[0].Words() == name && row.Under("At") == from
            );
            Assert.Contains(pack["guide.html"].QuerySelectorAll("table.timing tbody tr"), row =>
                row.Under("What happens").StartsWith($"Show: {name}", StringComparison.Ordinal)
                && row.Under("At") == from
                && row.Under("Until") == to
            );
            Assert.Contains(pack["projector.html"].QuerySelectorAll("section"), screen =>
                screen.QuerySelector("h2")?.Words() == name
                && screen.Words().Contains($"Watch, at {from.Split(' ')[0]}", StringComparison.Ordinal)
            );
            Assert.DoesNotContain(steps, step => (begins < step.From && step.From < ends) || (begins < step.To && step.To < ends));
        }
    }

    /// <summary>
    /// What the instructor does with own hands is not asked while they show something: dials, and what comes out of the refrigerator.
    /// </summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Nothing_else_is_asked_of_the_instructor_while_they_show_something(string kitchen)
    {
        var rows = InstructorRows(kitchen);
        foreach (var show in rows.Where(row => row.Under("What").StartsWith("Show: ", StringComparison.Ordinal)))
            Assert.DoesNotContain(rows, row =>
                row != show
                && IsByHand(row.Under("What"))
                && show.MinuteUnder("At") < row.MinuteUnder("At")
                && row.MinuteUnder("At") < show.MinuteUnder("Until")
            );

        static bool IsByHand(string what) =>
            Dial().IsMatch(what)
            || what.StartsWith("Take ", StringComparison.Ordinal)
            || what.StartsWith("Switch ", StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(OfThreeLifts))]
    public void Letting_out_steam_is_shown_before_the_first_popover_has_to_be_pierced(string kitchen)
    {
        // Shown on hot ones it would keep all the others waiting unpierced: it is a rehearsal, and over when they come out.
        var plan = Kitchens.Of(kitchen)["bench-plan.html"];
        var pierced = plan.QuerySelectorAll("table:has(.group) tbody tr")
            .Where(row => row.Children[0].Words() == "9. Pierce")
            .Select(row => row.MinuteUnder("From"));
        var shown = plan.QuerySelectorAll("table.fit tbody tr").Single(row => row.Under("What is shown") == "Letting out the steam");
        Assert.True(shown.MinuteUnder("To") <= pierced.Min());
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Weighing_is_a_step_of_every_card_and_of_every_team_s_run_sheet(string kitchen)
    {
        var pack = Kitchens.Of(kitchen);
        var cards = pack["formula-cards.html"].QuerySelectorAll(".card");
        Assert.All(cards, card => Assert.Contains(card.QuerySelectorAll(".method strong"), name => name.Words() == "Weigh"));
        // What is done the day before stands on no sheet of this class.
        var today = cards
            .Select(card => card.QuerySelector("h2")!.Words())
            .Where(bread =>
                pack["bench-plan.html"]
                    .QuerySelectorAll("table:has(.group) tbody")
                    .Any(body =>
                        body.QuerySelector(".group")!.Words() == bread
                        && body.QuerySelectorAll("tr").Any(row => row.Children[0].Words() == "1. Weigh")
                    )
            )
            .ToList();
        Assert.All(pack["run-sheets.html"].QuerySelectorAll(".run-sheet[aria-labelledby^=team]"), sheet =>
            Assert.Equal(
                today.Count,
                sheet
                    .QuerySelectorAll("tbody tr")
                    .Count(row => row.Under("What") == "1. Weigh" && row.Under("Mind").Contains("scale", StringComparison.Ordinal))
            )
        );
    }

    /// <summary>The steps in the oven, by the plan's table: the truth that everything else is held against.</summary>
    private static List<Told> Steps(string kitchen)
    {
        List<Told> steps =
        [
            .. Kitchens
                .Of(kitchen)["bench-plan.html"]
                .QuerySelectorAll("table:has(.group) tbody tr:not(.group)")
                .Select(row => (Row: row, Match: AtHeat().Match(row.Under("Occupies"))))
                .Where(found => found.Match.Success)
                .SelectMany(found =>
                    Number()
                        .Matches(found.Match.Groups["ovens"].Value)
                        .Select(oven => new Told(
                            oven.Value,
                            found.Row.MinuteUnder("From"),
                            found.Row.MinuteUnder("To"),
                            found.Match.Groups["heat"].Value
                        ))
                ),
        ];
        Assert.True(steps.Count >= 3, $"{steps.Count}");
        return steps;
    }

    private static List<IElement> InstructorRows(string kitchen) =>
        [.. Kitchens.Of(kitchen)["run-sheets.html"].QuerySelector("[aria-labelledby=instructor]")!.QuerySelectorAll("tbody tr")];

    /// <summary>
    /// The texts of an oven's row of the drawing, which is named by its first soft text; ovens that do the same share one.
    /// </summary>
    private static List<IElement> RowOf(string kitchen, string oven) =>
        [
            .. Kitchens
                .Of(kitchen)["bench-plan.html"]
                .QuerySelectorAll("svg.timeline > g")
                .Single(group =>
                    group
                        .QuerySelectorAll("text")
                        .Any(text =>
                            OvenRow().Match(text.Words()) is { Success: true } row
                            && Number().Matches(row.Value).Any(number => number.Value == oven)
                        )
                )
                .QuerySelectorAll("text"),
        ];

    [GeneratedRegex("^Ovens? [0-9, and]+$")]
    private static partial Regex OvenRow();

    [GeneratedRegex(@"^oven (?<ovens>[0-9, and]+) at (?<heat>.+)$")]
    private static partial Regex AtHeat();

    [GeneratedRegex(@"^(Set|Turn) ovens? (?<ovens>[0-9, and]+) to (?<heat>.+)$")]
    private static partial Regex Dial();

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Number();
}
