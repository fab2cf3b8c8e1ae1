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

    private static readonly Dictionary<string, List<Step>> Cards = BuiltPack.Demo["formula-cards.html"].QuerySelectorAll(".card")
        .ToDictionary(card => card.QuerySelector("h2")!.Words(), card => card.QuerySelectorAll(".method > li").Select(CardStep).ToList());

    [Fact]
    public void Every_step_is_planned_within_the_minutes_of_its_card_and_at_its_oven_heat()
    {
        var planned = 0;
        foreach (var table in BuiltPack.Demo["bench-plan.html"].QuerySelectorAll("table:has(.group)"))
        {
            foreach (var body in table.QuerySelectorAll("tbody"))
            {
                var steps = Cards[body.QuerySelector(".group")!.Words()];
                var rows = body.QuerySelectorAll("tr:not(.group)").ToList();
                Assert.Equal(steps.Count, rows.Count);
                foreach (var (at, row) in rows.Index())
                {
                    var minutes = PageText.Clock(row.Children[2].Words()) - PageText.Clock(row.Children[1].Words());
                    Assert.Equal($"{at + 1}. {steps[at].Name}", row.Children[0].Words());
                    Assert.Equal(row.Children[3].Words(), minutes.ToString(CultureInfo.InvariantCulture));
                    Assert.InRange(minutes, steps[at].Min, steps[at].Max);
                    if (steps[at].Oven.Length > 0) Assert.EndsWith("at " + steps[at].Oven, row.Children[5].Words(), StringComparison.Ordinal);
                    planned++;
                }
            }
        }
        Assert.True(planned >= Cards.Values.Sum(steps => steps.Count));
    }

    [Fact]
    public void The_run_sheets_have_the_minutes_of_the_plan()
    {
        var plan = BuiltPack.Demo["bench-plan.html"].QuerySelectorAll("table:has(.group) tbody")
            .SelectMany(body => body.QuerySelectorAll("tr:not(.group)").Select(row => (body.QuerySelector(".group")!.Words(), row.Children[0].Words(), row.Children[1].Words(), row.Children[2].Words())))
            .ToHashSet();
        var teams = BuiltPack.Demo["run-sheets.html"].QuerySelectorAll(".run-sheet[aria-labelledby^=team]").ToList();
        Assert.Equal(6, teams.Count);
        foreach (var team in teams)
        {
            var rows = team.QuerySelectorAll("tbody tr").Where(row => char.IsDigit(row.Children[2].Words()[0])).ToList();
            Assert.Equal(Cards.Values.Sum(steps => steps.Count), rows.Count);
            Assert.All(rows, row => Assert.Contains((row.Children[3].Words(), row.Children[2].Words(), row.Children[1].Words(), row.Children[4].Words()), plan));
        }
    }

    [Fact]
    public void The_oven_on_a_card_is_the_oven_of_its_steps()
    {
        foreach (var card in BuiltPack.Demo["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var ovens = Cards[card.QuerySelector("h2")!.Words()].Select(step => step.Oven).Where(oven => oven.Length > 0).ToList();
            var told = card.QuerySelectorAll("li").Single(item => item.Words().StartsWith("Oven: ", StringComparison.Ordinal)).Words();
            Assert.Equal(ovens[0] == ovens[^1] ? $"Oven: {ovens[0]}" : $"Oven: {ovens[0]}, then {ovens[^1]}", told);
        }
    }

    [Fact]
    public void The_time_of_a_bread_is_the_sum_of_its_steps_on_every_page_that_tells_it()
    {
        foreach (var page in new[] { "index.html", "handout.html" })
        {
            foreach (var row in BuiltPack.Demo[page].QuerySelectorAll("table.breads tbody tr"))
            {
                var steps = Cards[row.QuerySelector("th")!.Words()];
                Assert.Equal($"{steps.Sum(step => step.Min)}–{steps.Sum(step => step.Max)} min", row.Children[3].Words());
            }
        }
    }

    /// <summary>°F = °C × 9/5 + 32 (NIST SP 811, B.8); a dial's Fahrenheit is rounded to 25, so that it may lie half of that off.</summary>
    [Fact]
    public void Both_scales_of_every_temperature_on_every_page_say_the_same()
    {
        var seen = 0;
        foreach (var (file, page) in BuiltPack.Demo.Pages)
        {
            foreach (Match pair in page.Body!.Descendants<IText>().SelectMany(text => Pair().Matches(text.Words())))
            {
                seen++;
                foreach (var (c, f) in new[] { ("c1", "f1"), ("c2", "f2") })
                {
                    if (!pair.Groups[c].Success) continue;
                    var celsius = double.Parse(pair.Groups[c].Value.Replace('−', '-'), CultureInfo.InvariantCulture);
                    var off = Math.Abs(celsius * 1.8 + 32 - double.Parse(pair.Groups[f].Value, CultureInfo.InvariantCulture));
                    Assert.True(off <= (celsius > 110 ? 12.5 : 1), $"{file}: {pair.Value}");
                }
            }
        }
        Assert.True(seen > 50, $"{seen}");
    }

    [Fact]
    public void Every_page_tells_the_same_class()
    {
        foreach (var (file, page) in BuiltPack.Demo.Pages)
            Assert.True(page.QuerySelector(".kicker")!.Words().Contains("Tuesday bakers", StringComparison.Ordinal), file);
    }

    private static Step CardStep(IElement item)
    {
        var facts = item.QuerySelector(".soft")!.Words();
        var minutes = Duration().Match(facts);
        var least = int.Parse(minutes.Groups["min"].Value, CultureInfo.InvariantCulture);
        var oven = facts.Split("oven ");
        return new(
            item.QuerySelector("strong")!.Words(), least,
            minutes.Groups["max"].Success ? int.Parse(minutes.Groups["max"].Value, CultureInfo.InvariantCulture) : least,
            oven.Length > 1 ? oven[1] : "");
    }

    [GeneratedRegex(@"^(?<min>\d+)(–(?<max>\d+))? min")]
    private static partial Regex Duration();

    [GeneratedRegex(@"(?<![\d.])(?<c1>[-−]?\d+(\.\d+)?)(–(?<c2>\d+))? °C \((?<f1>\d+(\.\d+)?)(–(?<f2>\d+))? °F\)")]
    private static partial Regex Pair();
}
