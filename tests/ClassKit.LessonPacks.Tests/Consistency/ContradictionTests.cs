using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>Times and temperatures of the same thing on different pages, read from the pages themselves.</summary>
public sealed partial class ContradictionTests
{
    /// <summary>A step as its card has it.</summary>
    private sealed record Step(string Name, int Min, int Max, string Oven);

    public static TheoryData<string> All => Kitchens.All;

    private static Dictionary<string, List<Step>> Cards(string kitchen) =>
        Kitchens
            .Of(kitchen)["formula-cards.html"]
            .QuerySelectorAll(".card")
            .ToDictionary(
                card => card.QuerySelector("h2")!.Words(),
                card => card.QuerySelectorAll(".method > li").Select(CardStep).ToList()
            );

    /// <summary>The plan's breads, each with the rows of its steps.</summary>
    private static IEnumerable<(string Bread, List<IElement> Rows)> Planned(IParentNode page) =>
        page.QuerySelectorAll("table:has(.group) tbody")
            .Select(body => (body.QuerySelector(".group")!.Words(), body.QuerySelectorAll("tr:not(.group)").ToList()));

    [Theory]
    [MemberData(nameof(All))]
    public void Every_step_is_planned_within_the_minutes_of_its_card_and_at_its_oven_heat(string kitchen)
    {
        var cards = Cards(kitchen);
        foreach (var (bread, rows) in Planned(Kitchens.Of(kitchen)["bench-plan.html"]).Where(planned => cards.ContainsKey(planned.Bread)))
        {
            // What is done the day before is not planned; what follows keeps its number.
            Assert.Equal(Enumerable.Range(cards[bread].Count - rows.Count + 1, rows.Count), rows.Select(Numbered));
            foreach (var row in rows)
            {
                var step = cards[bread][Numbered(row) - 1];
                var minutes = row.MinuteUnder("To") - row.MinuteUnder("From");
                Assert.Equal($"{Numbered(row)}. {step.Name}", row.Children[0].Words());
                Assert.Equal(row.Under("Minutes"), minutes.ToString(CultureInfo.InvariantCulture));
                Assert.InRange(minutes, step.Min, step.Max);
                if (step.Oven.Length > 0)
                    Assert.EndsWith("at " + step.Oven, row.Under("Occupies"), StringComparison.Ordinal);
            }
        }
        Assert.Superset(
            cards.Keys.ToHashSet(),
            Planned(Kitchens.Of(kitchen)["bench-plan.html"]).Select(planned => planned.Bread).Concat(cards.Keys).ToHashSet()
        );
    }

    /// <summary>
    /// No crumb that holds water is hotter than its boiling point: a card that asks for more asks for what cannot be, in a high kitchen at
    /// least.
    /// </summary>
    [Theory]
    [MemberData(nameof(All))]
    public void No_card_asks_for_a_middle_hotter_than_water_boils(string kitchen) => HasNoMiddleAboveTheBoil(kitchen, Kitchens.Of(kitchen));

    [Fact]
    public void Nor_does_one_of_rolls_that_are_baked_high_up() =>
        HasNoMiddleAboveTheBoil(
            "rolls at 2100 m",
            BuiltPack.Adapted("one-dough-three-clocks", "long-morning-class.md", "altitude: 2100 m")
        );

    private static void HasNoMiddleAboveTheBoil(string kitchen, BuiltPack pack)
    {
        var boils = Degrees(
                pack["guide.html"]
                    .QuerySelectorAll("dl > div")
                    .Single(fact => fact.QuerySelector("dt")?.Words() == "Water boils at")
                    .QuerySelector("dd")!
                    .Words()
            )
            .ToDictionary(degrees => degrees.Unit, degrees => degrees.Number);
        foreach (
            var step in pack["formula-cards.html"]
                .QuerySelectorAll(".method > li")
                .Select(step => step.Words())
                .Where(step => step.Contains("middle", StringComparison.Ordinal) && step.Contains("Done", StringComparison.Ordinal))
        )
            Assert.All(Degrees(step[step.IndexOf("Done", StringComparison.Ordinal)..]), degrees =>
                Assert.True(
                    degrees.Number <= boils[degrees.Unit],
                    $"{kitchen}: {step} Water boils at {boils[degrees.Unit]} °{degrees.Unit}."
                )
            );
    }

    private static IEnumerable<(string Unit, int Number)> Degrees(string words) =>
        Temperature()
            .Matches(words)
            .Select(match => (match.Groups["unit"].Value, int.Parse(match.Groups["degrees"].Value, CultureInfo.InvariantCulture)));

    [Theory]
    [MemberData(nameof(All))]
    public void The_run_sheets_have_the_minutes_of_the_plan(string kitchen)
    {
        var pack = Kitchens.Of(kitchen);
        var shifts = pack["bench-plan.html"]
            .QuerySelectorAll("table:has(.group)")
            .Where(table => table.QuerySelector("caption")!.Words().StartsWith("Instructor", StringComparison.Ordinal) == false)
            .Select(table =>
                Planned(table)
                    .SelectMany(planned =>
                        planned.Rows.Select(row => (planned.Bread, row.Children[0].Words(), row.MinuteUnder("From"), row.MinuteUnder("To")))
                    )
                    .ToHashSet()
            )
            .ToList();
        var teams = pack["run-sheets.html"].QuerySelectorAll(".run-sheet[aria-labelledby^=team]").ToList();
        Assert.Equal(
            int.Parse(
                Teams().Match(pack["formula-cards.html"].QuerySelector(".lede")!.Words()).Groups["teams"].Value,
                CultureInfo.InvariantCulture
            ),
            teams.Count
        );
        foreach (var team in teams)
        {
            var done = team.QuerySelectorAll("tbody tr")
                .Where(row => char.IsDigit(row.Under("What")[0]))
                .Select(row => (row.Under("Bread"), row.Under("What"), row.MinuteUnder("At"), row.MinuteUnder("Until")))
                .ToHashSet();
            Assert.Contains(shifts, shift => shift.SetEquals(done));
        }
    }

    /// <summary>A talking point stands at the minute at which the first team gets to its step.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void The_guide_speaks_of_a_step_when_the_first_team_is_at_it(string kitchen)
    {
        var pack = Kitchens.Of(kitchen);
        var rows = Planned(pack["bench-plan.html"])
            .SelectMany(planned =>
                planned.Rows.Select(row =>
                    (Heading: $"{planned.Bread}: {row.Children[0].Words().Split(". ")[1]}.", From: row.MinuteUnder("From"))
                )
            )
            .ToList();
        var spoken = 0;
        foreach (var row in pack["guide.html"].QuerySelectorAll("table.timing tbody tr").Where(row => row.Under("At") != "–"))
        {
            var heading = row.QuerySelector("strong")!.Words();
            if (rows.Where(planned => planned.Heading == heading).Select(planned => planned.From).ToList() is not { Count: > 0 } begins)
                continue;
            Assert.Equal(begins.Min(), row.MinuteUnder("At"));
            spoken++;
        }
        Assert.True(spoken > 0);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_oven_on_a_card_is_the_oven_of_its_steps(string kitchen)
    {
        foreach (var card in Kitchens.Of(kitchen)["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var ovens = Cards(kitchen)[card.QuerySelector("h2")!.Words()].Select(step => step.Oven).Where(oven => oven.Length > 0).ToList();
            var told = card.QuerySelectorAll("li").Single(item => item.Words().StartsWith("Oven: ", StringComparison.Ordinal)).Words();
            Assert.Equal(ovens[0] == ovens[^1] ? $"Oven: {ovens[0]}" : $"Oven: {ovens[0]}, then {ovens[^1]}", told);
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_time_of_a_bread_is_the_sum_of_its_steps_on_every_page_that_tells_it(string kitchen)
    {
        foreach (var page in new[] { "index.html", "handout.html" })
        {
            foreach (var row in Kitchens.Of(kitchen)[page].QuerySelectorAll("table.breads tbody tr"))
            {
                var steps = Cards(kitchen)[row.QuerySelector("th")!.Words()];
                Assert.Equal($"{steps.Sum(step => step.Min)}–{steps.Sum(step => step.Max)} min", row.Children[3].Words());
            }
        }
    }

    /// <summary>°F = °C × 9/5 + 32 (NIST SP 811, B.8); a dial's Fahrenheit is rounded to 25, so that it may lie half of that off.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Both_scales_of_every_temperature_on_every_page_say_the_same(string kitchen)
    {
        var seen = 0;
        foreach (var (file, page) in Kitchens.Of(kitchen).Pages)
        {
            foreach (Match pair in page.Body!.Descendants<IText>().SelectMany(text => Pair().Matches(text.Words())))
            {
                seen++;
                foreach (var (c, f) in new[] { ("c1", "f1"), ("c2", "f2") })
                {
                    if (!pair.Groups[c].Success)
                        continue;
                    var celsius = double.Parse(pair.Groups[c].Value.Replace('−', '-'), CultureInfo.InvariantCulture);
                    var off = Math.Abs(celsius * 1.8 + 32 - double.Parse(pair.Groups[f].Value, CultureInfo.InvariantCulture));
                    Assert.True(off <= (celsius > 110 ? 12.5 : 1), $"{file}: {pair.Value}");
                }
            }
        }
        Assert.True(seen > (kitchen is "cool kitchen" or "high and warm" ? 0 : 50), $"{seen}");
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_page_tells_the_same_class(string kitchen)
    {
        foreach (var (file, page) in Kitchens.Of(kitchen).Pages)
            Assert.True(Regex.IsMatch(page.QuerySelector(".kicker")!.Words(), "Tuesday bakers|Thursday bakers"), file);
    }

    private static int Numbered(IElement row) => int.Parse(row.Children[0].Words().Split('.')[0], CultureInfo.InvariantCulture);

    private static Step CardStep(IElement item)
    {
        var facts = item.QuerySelector(".soft")!.Words();
        var minutes = Duration().Match(facts);
        var least = int.Parse(minutes.Groups["min"].Value, CultureInfo.InvariantCulture);
        var oven = facts.Split("oven ");
        return new(
            item.QuerySelector("strong")!.Words(),
            least,
            minutes.Groups["max"].Success ? int.Parse(minutes.Groups["max"].Value, CultureInfo.InvariantCulture) : least,
            oven.Length > 1 ? oven[1] : ""
        );
    }

    [GeneratedRegex(@"Print (?<teams>[0-9]+) sets")]
    private static partial Regex Teams();

    [GeneratedRegex(@"^(?<min>\d+)(–(?<max>\d+))? min")]
    private static partial Regex Duration();

    [GeneratedRegex(@"(?<degrees>[0-9]+) °(?<unit>[CF])")]
    private static partial Regex Temperature();

    [GeneratedRegex(@"(?<![\d.])(?<c1>[-−]?\d+(\.\d+)?)(–(?<c2>\d+))? °C \((?<f1>\d+(\.\d+)?)(–(?<f2>\d+))? °F\)")]
    private static partial Regex Pair();
}
