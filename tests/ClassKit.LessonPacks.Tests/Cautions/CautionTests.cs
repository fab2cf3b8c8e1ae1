using System.Text.RegularExpressions;
using ClassKit.Content.Lessons;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Cautions;

/// <summary>Every page where someone could get hurt says how not to, and where that is from. Both shipped lessons.</summary>
public sealed class CautionTests
{
    private static readonly string[] CardsWithBurners = ["Batter buns", "Popovers", "Buttermilk muffins"];

    private static readonly BuiltPack[] Packs = [BuiltPack.Demo, BuiltPack.Mountain];

    [Fact]
    public void Local_codes_come_first_on_every_page_and_on_every_sheet_that_is_handed_out()
    {
        foreach (var pack in Packs)
        {
            foreach (var (file, page) in pack.Pages)
                Assert.True(
                    page.Body!.Words()
                        .Contains("Local codes and the instructor’s own safety rules come before anything", StringComparison.Ordinal),
                    file
                );
            // The foot of the page is not printed on these: each sheet says it itself.
            foreach (
                var sheet in pack["formula-cards.html"].QuerySelectorAll(".card").Concat(pack["run-sheets.html"].QuerySelectorAll(".card"))
            )
                Assert.Contains(
                    "local codes and the instructor",
                    sheet.Words().Replace("Local", "local", StringComparison.Ordinal),
                    StringComparison.Ordinal
                );
        }
    }

    [Theory]
    [InlineData("formula-cards.html", ".card")]
    [InlineData("handout.html", "main")]
    [InlineData("guide.html", "main")]
    public void Raw_flour_allergens_and_holding_are_spoken_of_wherever_dough_is(string file, string sheet)
    {
        foreach (var part in Packs.SelectMany(pack => pack[file].QuerySelectorAll(sheet)))
        {
            Assert.Matches("(?i)raw (egg and )?flour", part.Words());
            Assert.Matches("(?i)allergens", part.Words());
            Assert.Matches("57 °C|4 hours", part.Words());
        }
    }

    [Fact]
    public void A_burner_hot_fat_and_steam_are_spoken_of_on_the_cards_that_have_them()
    {
        var cards = BuiltPack
            .Demo["formula-cards.html"]
            .QuerySelectorAll(".card")
            .ToDictionary(card => card.QuerySelector("h2")!.Words(), card => card.QuerySelector(".caution")!.Words());
        Assert.All(CardsWithBurners, bread => Assert.Matches("(?i)burner|flame", cards[bread]));
        Assert.Matches("(?i)hot tin and fat", cards["Popovers"]);
        Assert.Matches("(?i)steam", cards["Popovers"]);

        // Nothing of the second lesson stands on a burner, and nothing bakes in hot fat.
        Assert.All(BuiltPack.Mountain["formula-cards.html"].QuerySelectorAll(".card .caution"), caution =>
            Assert.DoesNotMatch("(?i)burner|hot fat", caution.Words())
        );
    }

    /// <summary>
    /// Regulation (EU) 1169/2011, Annex II, read by hand against the three formulas: flour of wheat, egg, butter and milk; without its soda
    /// and powder the control holds the same.
    /// </summary>
    [Fact]
    public void What_is_declared_stands_on_a_card_a_word_each()
    {
        var cards = BuiltPack.Demo["formula-cards.html"].QuerySelectorAll(".card, .control-card");
        Assert.Equal(4, cards.Length);
        Assert.All(cards, card =>
            Assert.Equal(["egg", "milk", "wheat"], card.QuerySelectorAll(".declared li").Select(word => word.Words()).Order())
        );
        Assert.Contains("wheat in baking powder", cards[2].QuerySelector(".declared")!.Words(), StringComparison.Ordinal);
        Assert.DoesNotContain("baking powder", cards[3].QuerySelector(".declared")!.Words(), StringComparison.Ordinal);
    }

    /// <summary>A hundred and sixty letters are read aloud in some ten seconds; deep fat alone has more to say.</summary>
    [Fact]
    public void A_card_has_a_rule_for_each_hazard_and_none_is_long()
    {
        var rules = Packs.SelectMany(pack => pack["formula-cards.html"].QuerySelectorAll(".card .rules > li")).ToList();
        Assert.All(rules, rule => Assert.Single(rule.QuerySelectorAll("strong")));
        Assert.All(rules, rule => Assert.InRange(rule.Words().Length, 20, 200));
        Assert.All(Packs.SelectMany(pack => pack["formula-cards.html"].QuerySelectorAll(".card")), card =>
            Assert.InRange(card.QuerySelectorAll(".rules > li").Length, 6, 14)
        );
    }

    /// <summary>
    /// By hand, from what is shown: the kettle warns of scalds and not of the oven, the hot tin of the oven and not of the kettle.
    /// </summary>
    [Theory]
    [InlineData("Milk for yeast", "burner or open flame, probes, first aid for a burn")]
    [InlineData("Filling a hot tin", "hot oven and tins, hot fat, first aid for a burn")]
    [InlineData("A dozen strokes, and a control", "raw flour")]
    [InlineData("Letting out the steam", "hot oven and tins, steam, knives and skewers, first aid for a burn")]
    [InlineData("A balloon in thin air", "scalds, balloons, first aid for a burn")]
    [InlineData("Rubbing in", "raw flour")]
    [InlineData("The probe and the skewer", "knives and skewers, probes")]
    public void A_demonstration_warns_of_what_it_shows(string name, string mind)
    {
        var row = Packs
            .SelectMany(pack => pack["stations.html"].RowsBelow("instructor"))
            .Single(row => row.QuerySelector("th")!.Words() == name);
        foreach (var hazard in mind.Split(", "))
            Assert.Contains(hazard, row.Children[^1].Words(), StringComparison.Ordinal);
        foreach (
            var other in new[] { "scalds", "balloons", "hot fat", "mixer" }.Where(other => !mind.Contains(other, StringComparison.Ordinal))
        )
            Assert.DoesNotContain(other, row.Children[^1].Words(), StringComparison.Ordinal);
    }

    /// <summary>The last row reads a rule behind every hazard, and that of no other.</summary>
    [Fact]
    public void Every_hazard_on_the_projector_has_its_own_rule()
    {
        foreach (var pack in (BuiltPack[])[BuiltPack.Demo, BuiltPack.Mountain, BuiltPack.NoOven, BuiltPack.LongMorning])
        {
            var rules = pack["projector.html"]
                .QuerySelectorAll("ul.big li")
                .ToDictionary(rule => rule.QuerySelector("strong")!.Words(), rule => rule.Words());
            Assert.NotEmpty(rules);
            Assert.All(rules, rule => Assert.True(rule.Value.Length > rule.Key.Length + 10, rule.Value));
            Assert.All(rules.Where(rule => rule.Value.Contains("one pours", StringComparison.Ordinal)), rule =>
                Assert.Contains("cald", rule.Key, StringComparison.Ordinal)
            );
        }
        Assert.Contains(
            "probe",
            BuiltPack
                .Mountain["projector.html"]
                .QuerySelectorAll("ul.big li")
                .Single(rule => rule.QuerySelector("strong")!.Words() == "Cooler boiling")
                .Words(),
            StringComparison.Ordinal
        );
    }

    /// <summary>It comes out of the oven that its bread comes out of.</summary>
    [Fact]
    public void A_controls_card_warns_of_the_heat_that_it_goes_through() =>
        Assert.Contains(
            "Hot oven and tins",
            BuiltPack.Demo["formula-cards.html"].QuerySelector(".control-card .caution")!.Words(),
            StringComparison.Ordinal
        );

    /// <summary>
    /// A drop of batter or dough is of the demonstration's own, of a control's, or of a bread that is mixed by then; what it shows lies
    /// ready.
    /// </summary>
    [Theory]
    [InlineData("one-tin-three-lifts")]
    [InlineData("thin-air-quick-breads")]
    [InlineData("no-oven-in-the-house")]
    [InlineData("one-dough-three-clocks")]
    public void A_demonstration_has_the_batter_that_it_shows_and_the_tools_that_it_names(string lesson)
    {
        foreach (var shown in LessonReader.Read(Repository.PathOf("lessons", lesson)).Model!.Demonstrations)
        {
            var said = shown.Text.Written;
            Assert.True(
                !Regex.IsMatch(said, @"\b(batter|starter)\b")
                    || shown.Ingredients.Count > 0
                    || shown.ControlOf is not null
                    || shown.After is not null,
                shown.Name
            );
            foreach (var tool in (string[])["extinguisher", "blanket", "lid", "thermometer", "skewer", "knife", "balloon"])
                Assert.True(
                    !Regex.IsMatch(said, $@"\b{tool}\b") || shown.Tools.Any(set => set.Contains(tool, StringComparison.OrdinalIgnoreCase)),
                    $"{shown.Name}: {tool}"
                );
        }
    }

    /// <summary>
    /// British Burn Association, First Aid Clinical Practice Guidelines (2018): cool running tap water for 20 minutes. FDA Food Code
    /// 4-602.11 and 4-702.11, from memory.
    /// </summary>
    [Fact]
    public void First_aid_for_a_burn_and_clean_probes_are_on_every_card_and_their_sources_in_guide_and_handout()
    {
        foreach (
            var sheet in Packs.SelectMany(pack =>
                pack["formula-cards.html"].QuerySelectorAll(".card").Append(pack["guide.html"].Body!).Append(pack["handout.html"].Body!)
            )
        )
        {
            Assert.Contains("under cool running water for 20 minutes", sheet.Words(), StringComparison.Ordinal);
            Assert.Contains("always between raw and baked", sheet.Words(), StringComparison.Ordinal);
        }
        foreach (var page in Packs.SelectMany(pack => new[] { pack["guide.html"], pack["handout.html"] }))
        {
            Assert.Contains("British Burn Association", page.Body!.Words(), StringComparison.Ordinal);
            Assert.Contains("FDA Food Code 4-602.11", page.Body!.Words(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Where_cautions_are_listed_each_names_its_source()
    {
        foreach (
            var (file, cautions) in Packs.SelectMany(pack =>
                new[] { "guide.html", "handout.html", "requisition.html" }.Select(file =>
                    (file, pack[file].QuerySelectorAll(".caution:has(.small)"))
                )
            )
        )
        {
            Assert.NotEmpty(cautions);
            Assert.All(cautions, caution => Assert.Matches(@"\(.{8,}\)$", caution.QuerySelector(".small")!.Words()));
            Assert.True(file.Length > 0);
        }
    }

    /// <summary>
    /// FDA Food Code 3-501.16: 57 °C (135 °F) and above, 5 °C (41 °F) and below; some cities keep the older 60 °C (140 °F).
    /// </summary>
    [Fact]
    public void Holding_temperatures_are_those_of_the_food_code()
    {
        foreach (var file in new[] { "guide.html", "handout.html", "requisition.html" })
        {
            var text = BuiltPack.Demo[file].Body!.Words();
            Assert.Contains("57 °C (135 °F) or above", text, StringComparison.Ordinal);
            Assert.Contains("60 °C (140 °F)", text, StringComparison.Ordinal);
        }
        Assert.Contains("5 °C (41 °F) or below", BuiltPack.Demo["stations.html"].Body!.Words(), StringComparison.Ordinal);
    }
}
