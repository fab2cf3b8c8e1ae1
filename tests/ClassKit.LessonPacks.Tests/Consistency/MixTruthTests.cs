using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Ingredients;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>One temperature with one band for every mix, wherever it stands; and what is warmed or taken out for it has its minute. Other classes too.</summary>
public sealed partial class MixTruthTests
{
    /// <summary>FDA Food Code 3-501.19.</summary>
    private const int MinutesOut = 240;

    private static readonly Dictionary<string, BuiltPack> Packs = new()
    {
        ["demo"] = BuiltPack.Demo,
        ["mountain"] = BuiltPack.Mountain,
        ["cool kitchen"] = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "kitchen temperature: 18 °C", "teams: 4", "students: 14", "units: metric"),
    };

    public static TheoryData<string> All => [.. Packs.Keys];

    [Theory]
    [MemberData(nameof(All))]
    public void Every_page_asks_the_same_of_a_mix(string name)
    {
        var pack = Packs[name];
        foreach (var card in pack["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var bread = card.QuerySelector("h2")!.Words();
            var fact = Mixed().Match(card.QuerySelectorAll("li").Single(item => item.Words().StartsWith("Mixed: ", StringComparison.Ordinal)).Words());
            var (aim, right) = (fact.Groups["aim"].Value, fact.Groups["right"].Value);
            foreach (var page in new[] { "guide.html", "rubric.html", "stations.html", "projector.html" })
            {
                var row = pack[page].QuerySelectorAll("tr").Single(row => row.ParentElement!.LocalName == "tbody" && row.Closest("table")!.QuerySelector("thead th:nth-child(2)")?.Words() == "Mixed" && row.Children[0].Words() == bread);
                Assert.Equal((aim, right), (row.Children[1].Words(), row.Children[2].Words()));
            }
            var observed = pack["observations.html"].QuerySelectorAll(".observed").Single(sheet => sheet.QuerySelector("h2")!.Words() == bread);
            Assert.Contains($"Batter or dough at (right from {right})", observed.Words(), StringComparison.Ordinal);
        }
    }

    /// <summary>The independent balance: what the card weighs, at the temperatures that the card says, with its own arithmetic.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void What_a_card_weighs_and_warms_comes_to_what_it_asks(string name)
    {
        foreach (var card in Packs[name]["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var facts = card.QuerySelectorAll("li").Select(item => item.Words()).ToList();
            var kitchen = name switch { "demo" => 24.0, "mountain" => 20, _ => 18 };
            var (heat, warmth) = (0.0, 0.0);
            foreach (var row in card.QuerySelector("table")!.QuerySelectorAll("tbody tr"))
            {
                var ingredient = IngredientCatalog.All.Single(known => known.Name == row.Children[0].Words());
                var joules = (double)row.QuerySelector("strong")!.Grams() * SpecificHeat.Of(ingredient);
                (heat, warmth) = (heat + joules, warmth + joules * At(ingredient, facts, card.QuerySelector(".method")!.Words(), kitchen));
            }
            // The bowl of a tenth, as the settings name it.
            var mixed = (warmth + 0.1 * heat * kitchen) / (1.1 * heat);
            var aim = Celsius(Mixed().Match(facts.Single(fact => fact.StartsWith("Mixed: ", StringComparison.Ordinal))).Groups["aim"].Value);
            Assert.True(Math.Abs(mixed - aim) < 1, $"{name}, {card.QuerySelector("h2")!.Words()}: {mixed} against {aim}");
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_plan_warms_what_the_cards_warm_and_to_the_same_degree(string name)
    {
        var pack = Packs[name];
        var warmed = pack["formula-cards.html"].QuerySelectorAll(".card").Select(card => (Bread: card.QuerySelector("h2")!.Words(), Fact: card.QuerySelectorAll("li").Select(item => item.Words()).SingleOrDefault(item => item.StartsWith("Goes in warm: ", StringComparison.Ordinal)))).Where(card => card.Fact is not null).ToList();
        Assert.NotEmpty(warmed);
        foreach (var (bread, fact) in warmed)
        {
            var degrees = Degrees().Match(fact!).Value;
            Assert.All(pack["run-sheets.html"].QuerySelectorAll(".run-sheet[aria-labelledby^=team]"), sheet =>
                Assert.Single(sheet.QuerySelectorAll("tbody tr"), row => row.Children[3].Words() == bread && row.Children[5].Words().Contains($" to {degrees}", StringComparison.Ordinal)));
            Assert.Contains(pack["bench-plan.html"].QuerySelectorAll("table:has(.group) tbody"), body => body.QuerySelector(".group")!.Words() == bread && body.Words().Contains($" to {degrees}", StringComparison.Ordinal));
        }
    }

    /// <summary>What stands to get soft has its minute on the instructor's sheet, an hour before, and is baked within the hours that it may be out.</summary>
    [Fact]
    public void What_is_tempered_is_taken_out_in_time_and_baked_in_time()
    {
        var pack = Packs["mountain"];
        var taken = pack["run-sheets.html"].QuerySelector("[aria-labelledby=instructor]")!.QuerySelectorAll("tbody tr").Where(row => row.Children[2].Words() == "Take unsalted butter out of the refrigerator").ToList();
        Assert.NotEmpty(taken);
        var cream = pack["bench-plan.html"].QuerySelectorAll("table:has(.group) tbody tr").Where(row => row.Children[0].Words() == "2. Cream").Select(row => PageText.Clock(row.Children[1].Words())).Order();
        Assert.Equal(cream.Select(minute => minute - 60), taken.Select(row => PageText.Clock(row.Children[1].Words())).Order());
        var baked = pack["bench-plan.html"].QuerySelectorAll("table:has(.group) tbody tr").Where(row => row.Children[0].Words() == "5. Bake").Max(row => PageText.Clock(row.Children[2].Words()));
        Assert.True(baked - taken.Min(row => PageText.Clock(row.Children[1].Words())) <= MinutesOut);
    }

    /// <summary>Butter melts at 32 °C to 35 °C (Cheung, The Physics Factbook, 2003): no mix of these packs is that warm, so no page may say that it stays melted.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void No_page_says_that_butter_stays_melted_in_a_mix_that_is_cooler(string name)
    {
        foreach (var (file, page) in Packs[name].Pages)
            Assert.False(Regex.IsMatch(page.Body!.Words(), "(?i)(stays?|still|remains?|keeps?) (melted|liquid)"), file);
    }

    private static double At(Ingredient ingredient, List<string> facts, string method, double kitchen)
    {
        var called = ingredient.Name.ToLowerInvariant();
        string? Saying(string start) => facts.FirstOrDefault(fact => fact.StartsWith(start, StringComparison.Ordinal) && fact.Contains(called, StringComparison.Ordinal));
        if (Saying("Goes in warm: ") is { } warm)
            return Celsius(Degrees().Match(warm).Value);
        if (Saying("Straight from the refrigerator: ") is not null)
            return 4;
        if (Saying("Out of the refrigerator: ") is not null)
            return kitchen - 0.2 * (kitchen - 4);
        return ingredient.Id == "unsalted_butter" && method.Contains("Melt the butter", StringComparison.Ordinal) ? 40 : kitchen;
    }

    private static double Celsius(string degrees) => double.Parse(Degrees().Match(degrees).Groups["celsius"].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^Mixed: (?<aim>.+?), right from (?<right>.+)$")]
    private static partial Regex Mixed();

    [GeneratedRegex(@"(?<celsius>[0-9]+) °C( \([0-9]+ °F\))?")]
    private static partial Regex Degrees();
}
