using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Ingredients;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>
/// One temperature with one band for every mix, wherever it stands; and what is warmed or taken out for it has its minute. Other classes
/// too.
/// </summary>
public sealed partial class MixTruthTests
{
    /// <summary>FDA Food Code 3-501.19.</summary>
    private const int MinutesOut = 240;

    public static TheoryData<string> All => Kitchens.All;

    [Theory]
    [MemberData(nameof(All))]
    public void Every_page_asks_the_same_of_a_mix(string name)
    {
        var pack = Kitchens.Of(name);
        foreach (var card in pack["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var bread = card.QuerySelector("h2")!.Words();
            var fact = Mixed()
                .Match(card.QuerySelectorAll("li").Single(item => item.Words().StartsWith("Mixed: ", StringComparison.Ordinal)).Words());
            var (aim, right) = (fact.Groups["aim"].Value, fact.Groups["right"].Value);
            foreach (var page in new[] { "guide.html", "rubric.html", "stations.html", "projector.html" })
            {
                var row = pack[page]
                    .QuerySelectorAll("tr")
                    .Single(row =>
                        row.ParentElement!.LocalName == "tbody"
                        && row.Closest("table")!.QuerySelector("thead th:nth-child(2)")?.Words() == "Mixed"
                        && row.Children[0].Words() == bread
                    );
                Assert.Equal((aim, right), (row.Children[1].Words(), row.Children[2].Words()));
            }
            var mixed = pack["observations.html"].QuerySelector(".sheet-grid")!.Of(bread).Single(row => row.Row == "Just mixed");
            Assert.EndsWith($"(right from {right})", mixed.Cells[0].Words(), StringComparison.Ordinal);
        }
    }

    /// <summary>The independent balance: what the card weighs, at the temperatures that the card says, with its own arithmetic.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void What_a_card_weighs_and_warms_comes_to_what_it_asks(string name)
    {
        foreach (var card in Kitchens.Of(name)["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var facts = card.QuerySelectorAll("li").Select(item => item.Words()).ToList();
            var (kitchen, cold) = (
                name switch
                {
                    "cool kitchen" => 18.0,
                    "high and warm" => 27,
                    "mountain" or "by the clock, adjusted" or "at the sea" => 20,
                    _ => 24,
                },
                name switch
                {
                    "high and warm" => 3.0,
                    "at the sea" => 5,
                    _ => 4,
                }
            );
            var (heat, warmth) = (0.0, 0.0);
            foreach (var row in card.QuerySelector("table")!.QuerySelectorAll("tbody tr"))
            {
                var ingredient = IngredientCatalog.All.Single(known => known.Name == row.Children[0].Words());
                var joules = (double)row.QuerySelector("strong")!.Grams() * SpecificHeat.Of(ingredient);
                (heat, warmth) = (
                    heat + joules,
                    warmth + joules * At(ingredient, facts, card.QuerySelector(".method")!.Words(), kitchen, cold)
                );
            }
            // The bowl of a tenth, as the settings name it.
            var mixed = (warmth + 0.1 * heat * kitchen) / (1.1 * heat);
            var aim = Celsius(
                Mixed().Match(facts.Single(fact => fact.StartsWith("Mixed: ", StringComparison.Ordinal))).Groups["aim"].Value
            );
            Assert.True(Math.Abs(mixed - aim) < 1, $"{name}, {card.QuerySelector("h2")!.Words()}: {mixed} against {aim}");
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_plan_warms_what_the_cards_warm_and_to_the_same_degree(string name)
    {
        var pack = Kitchens.Of(name);
        var warmed = pack["formula-cards.html"]
            .QuerySelectorAll(".card")
            .Select(card =>
                (
                    Bread: card.QuerySelector("h2")!.Words(),
                    Fact: card.QuerySelectorAll("li")
                        .Select(item => item.Words())
                        .SingleOrDefault(item => item.StartsWith("Goes in warm: ", StringComparison.Ordinal))
                )
            )
            .Where(card => card.Fact is not null)
            .ToList();
        Assert.NotEmpty(warmed);
        foreach (var (bread, fact) in warmed)
        {
            var degrees = Degrees().Match(fact!).Value;
            // What is done the day before stands on no sheet of this class.
            if (
                !pack["bench-plan.html"]
                    .QuerySelectorAll("table:has(.group) tbody")
                    .Any(body =>
                        body.QuerySelector(".group")!.Words() == bread
                        && body.QuerySelectorAll("tr").Any(row => row.Children[0].Words() == "1. Weigh")
                    )
            )
                continue;
            Assert.All(pack["run-sheets.html"].QuerySelectorAll(".run-sheet[aria-labelledby^=team]"), sheet =>
                Assert.Single(sheet.QuerySelectorAll("tbody tr"), row =>
                    row.Under("Bread") == bread && row.Under("Mind").Contains($" to {degrees}", StringComparison.Ordinal)
                )
            );
            Assert.Contains(pack["bench-plan.html"].QuerySelectorAll("table:has(.group) tbody"), body =>
                body.QuerySelector(".group")!.Words() == bread && body.Words().Contains($" to {degrees}", StringComparison.Ordinal)
            );
        }
    }

    /// <summary>
    /// What stands to get soft has its minute on the instructor's sheet, an hour before, and is baked within the hours that it may be out.
    /// </summary>
    [Theory]
    [InlineData("mountain")]
    [InlineData("by the clock, adjusted")]
    [InlineData("at the sea")]
    public void What_is_tempered_is_taken_out_in_time_and_baked_in_time(string name)
    {
        var pack = Kitchens.Of(name);
        var taken = pack["run-sheets.html"]
            .QuerySelector("[aria-labelledby=instructor]")!
            .QuerySelectorAll("tbody tr")
            .Where(row => row.Under("What") == "Take unsalted butter out of the refrigerator")
            .Select(row => row.MinuteUnder("At"))
            .Order()
            .ToList();
        var cream = pack["bench-plan.html"]
            .QuerySelectorAll("table:has(.group) tbody tr")
            .Where(row => row.Children[0].Words() == "2. Cream")
            .Select(row => row.MinuteUnder("From"))
            .Distinct()
            .Order()
            .ToList();
        Assert.NotEmpty(taken);
        Assert.Equal(cream.Count, taken.Count);
        // A demonstration that is in the way makes it earlier, never later.
        Assert.All(cream.Zip(taken), pair => Assert.InRange(pair.First - pair.Second, 60, 65));
        var baked = pack["bench-plan.html"]
            .QuerySelectorAll("table:has(.group) tbody")
            .Where(body => body.QuerySelector(".group")!.Words() == "Butter cakes")
            .SelectMany(body => body.QuerySelectorAll("tr"))
            .Where(row => row.Children[0].Words() == "5. Bake")
            .Max(row => row.MinuteUnder("To"));
        Assert.True(baked - taken.Min() <= MinutesOut);
    }

    /// <summary>
    /// Butter melts at 32 °C to 35 °C (Cheung, The Physics Factbook, 2003): no mix of these packs is that warm, so no page may say that it
    /// stays melted.
    /// </summary>
    [Theory]
    [MemberData(nameof(All))]
    public void No_page_says_that_butter_stays_melted_in_a_mix_that_is_cooler(string name)
    {
        foreach (var (file, page) in Kitchens.Of(name).Pages)
            Assert.False(Regex.IsMatch(page.Body!.Words(), "(?i)(stays?|still|remains?|keeps?) (melted|liquid)"), file);
    }

    private static double At(Ingredient ingredient, List<string> facts, string method, double kitchen, double cold)
    {
        var called = ingredient.Name.ToLowerInvariant();
        string? Saying(string start) =>
            facts.FirstOrDefault(fact =>
                fact.StartsWith(start, StringComparison.Ordinal) && fact.Contains(called, StringComparison.Ordinal)
            );
        if ((Saying("Goes in warm: ") ?? Saying("Goes in cold: ")) is { } warm)
            return Celsius(Degrees().Match(warm).Value);
        if (Saying("Straight from the refrigerator: ") is not null)
            return cold;
        if (Saying("Out of the refrigerator: ") is not null)
            return kitchen - 0.2 * (kitchen - cold);
        return ingredient.Id == "unsalted_butter" && method.Contains("Melt the butter", StringComparison.Ordinal) ? 40 : kitchen;
    }

    private static double Celsius(string degrees) =>
        Degrees().Match(degrees) is var match && match.Groups["celsius"].Success
            ? double.Parse(match.Groups["celsius"].Value, CultureInfo.InvariantCulture)
            : (double.Parse(match.Groups["fahrenheit"].Value, CultureInfo.InvariantCulture) - 32) / 1.8;

    [GeneratedRegex(@"^Mixed: (?<aim>.+?), right from (?<right>.+)$")]
    private static partial Regex Mixed();

    [GeneratedRegex(@"(?<celsius>[0-9]+) °C( \([0-9]+ °F\))?|(?<fahrenheit>[0-9]+) °F")]
    private static partial Regex Degrees();
}
