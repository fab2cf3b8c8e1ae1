using AngleSharp.Dom;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>What is said of height is said by the way a bread is cooked, and only where it is true.</summary>
public sealed class HighKitchenTests
{
    /// <summary>
    /// At 1600 m, by hand: 356 °F less 3 °F for each of 5.25 thousand feet are 340 °F, 171 °C, and set to 5 °C (University of Wyoming
    /// Extension, B-734); water boils at 94.7 °C (IAPWS-IF97 under 835 hPa).
    /// </summary>
    [Fact]
    public void Guide_and_card_tell_fat_and_steam_what_height_asks_of_them()
    {
        var cards = Cards(OtherKitchens.NoOvenHigh);
        var guide = AtAltitude(OtherKitchens.NoOvenHigh);

        foreach (var page in (string[])[cards["Spoon fritters"], guide["Spoon fritters"].Words()])
        {
            Assert.Contains("about 170 °C (338 °F) here and not 180 °C (356 °F)", page, StringComparison.Ordinal);
            Assert.Contains("B-734", page, StringComparison.Ordinal);
        }
        foreach (var page in (string[])[cards["Steamed milk buns"], guide["Steamed milk buns"].Words()])
            Assert.Contains("Steam is at 94.7 °C (202.5 °F) here", page, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?i)bake|table for cakes", guide["Spoon fritters"].Words());
        Assert.DoesNotMatch("(?i)shell|longer", guide["Pan rounds"].Words());
    }

    [Fact]
    public void Where_formulas_are_adjusted_card_plan_and_run_sheet_have_the_cooler_fat()
    {
        var pack = OtherKitchens.NoOvenHighAdjusted;

        Assert.Contains("Fryer: 170 °C", Cards(pack)["Spoon fritters"], StringComparison.Ordinal);
        Assert.Contains("Changed for the altitude.", Cards(pack)["Spoon fritters"], StringComparison.Ordinal);
        foreach (var page in (string[])["formula-cards.html", "bench-plan.html", "run-sheets.html"])
            Assert.DoesNotMatch("fryer,? (at )?180 °C", pack[page].Body!.Words());
    }

    /// <summary>
    /// A heading with nothing below it says that something was forgotten; and of a series one way alone must not be changed.
    /// </summary>
    [Fact]
    public void Every_bread_at_altitude_has_something_below_its_heading_and_a_series_is_one_entry()
    {
        foreach (var pack in (BuiltPack[])[OtherKitchens.NoOvenHigh, OtherKitchens.LongMorningHigh, BuiltPack.Mountain])
            Assert.All(AtAltitude(pack).Values, entry => Assert.NotEmpty(entry.QuerySelectorAll("p, table")));

        var entries = AtAltitude(OtherKitchens.LongMorningHigh);
        Assert.Equal(["Starter rolls", "Yeast rolls, all ways", "Powder rolls, all ways"], entries.Keys);
        Assert.Contains("changed in all ways alike", entries["Yeast rolls, all ways"].Words(), StringComparison.Ordinal);
        Assert.Contains("up sooner", entries["Starter rolls"].Words(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Published limits of walls are of doughs at sea level: there they are known, and here they are taken for want of others.
    /// </summary>
    [Fact]
    public void The_known_band_is_sea_levels_and_here_says_that_it_is_taken_from_there()
    {
        var marked = 0;
        foreach (var pack in (BuiltPack[])[OtherKitchens.NoOvenHigh, OtherKitchens.LongMorningHigh, BuiltPack.Mountain])
        {
            foreach (var (file, page) in pack.Pages.Where(page => page.Key is "observations.html" or "projector.html" or "comparison.html"))
                Assert.All(page.QuerySelectorAll("td"), cell => Assert.False(cell.Words() == "not known", file));
            foreach (var bread in pack["observations.html"].QuerySelector(".expects")!.Breads())
            {
                foreach (
                    var (measure, texts) in pack["observations.html"]
                        .Expected(bread)
                        .Where(row => row.Value[0].EndsWith(", walls as at sea level", StringComparison.Ordinal))
                )
                {
                    marked++;
                    Assert.InRange(Upper(texts[0]), Upper(texts[1]) - 1, Upper(texts[1]) + 1);
                    Assert.Contains(measure, (string[])["Height", "Width at its widest"]);
                }
            }
        }
        Assert.True(marked > 0);
    }

    /// <summary>A school that lies low and teaches height says nothing of itself that is true of mountains alone.</summary>
    [Fact]
    public void At_the_sea_no_page_sets_the_kitchen_apart_from_the_sea()
    {
        foreach (var (file, page) in OtherKitchens.QuickBreadsLow.Pages)
        {
            Assert.False(System.Text.RegularExpressions.Regex.IsMatch(page.Body!.Words(), "(?i)than at (the sea|sea level)"), file);
            Assert.DoesNotContain("with 1013 hPa, at the sea with 1013 hPa", page.Body!.Words(), StringComparison.Ordinal);
        }
    }

    private static int Upper(string band) =>
        int.Parse(
            System.Text.RegularExpressions.Regex.Match(band, @"–(\d+)").Groups[1].Value,
            System.Globalization.CultureInfo.InvariantCulture
        );

    private static Dictionary<string, string> Cards(BuiltPack pack) =>
        pack["formula-cards.html"].QuerySelectorAll(".card").ToDictionary(card => card.QuerySelector("h2")!.Words(), card => card.Words());

    private static Dictionary<string, IElement> AtAltitude(BuiltPack pack)
    {
        Dictionary<string, IElement> entries = [];
        for (
            var next = pack["guide.html"].QuerySelector("#altitude")!.NextElementSibling;
            next is not null && next.LocalName != "h2";
            next = next.NextElementSibling
        )
            if (next.QuerySelector("h3") is { } title)
                entries[title.Words()] = next;
        return entries;
    }
}
