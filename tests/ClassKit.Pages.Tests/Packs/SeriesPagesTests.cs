using AngleSharp.Dom;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Packs;

/// <summary>What pages say of breads of a series of which a number would be a guess, and of one that stands.</summary>
public sealed class SeriesPagesTests
{
    private const string Muffins = "buttermilk_muffins";

    private static readonly Ingredient Powder = IngredientCatalog.Get("baking_powder");

    private static readonly Dictionary<string, IDocument> Pages = HtmlPages
        .Pack(
            SamplePack.For(SamplePack.Pack.Class, lesson =>
                lesson with
                {
                    Series =
                    [
                        new(Muffins, "Old tin", "What damp leaves of it.", [new SeriesChange.Aged(Powder, "kept open 6 months")]),
                        new(Muffins, "Weak powder", "What half of it does.", [new SeriesChange.Weakened(Powder, 0.5)]),
                        new(Muffins, "Held 40 min", "What the bowl loses.", [new SeriesChange.Held("Mix", 40)]),
                    ],
                }
            )
        )
        .ToDictionary(page => page.FileName, page => Html.Parse(page.Html));

    [Fact]
    public void An_old_powder_has_no_number_anywhere_and_a_cup_of_water_instead()
    {
        var row = Row("kept open 6 months");

        Assert.Equal(["measure it", "measure it", "measure it"], row.Skip(1).Take(3));
        Assert.Contains("old tin: its gas cannot be predicted", Comparison, StringComparison.Ordinal);
        Assert.Contains("kept open 6 months", Card("old tin"), StringComparison.Ordinal);
        Assert.Contains("stir half a teaspoon of it into a little hot water", Card("old tin"), StringComparison.Ordinal);
        Assert.DoesNotContain("half a teaspoon", Card("weak powder"), StringComparison.Ordinal);
    }

    /// <summary>Half a strength is a number, and where the forecast cannot tell it from the whole the page says so.</summary>
    [Fact]
    public void A_forecast_that_tells_nothing_apart_says_so()
    {
        var told = Comparison.Contains("weak powder: even so it makes more gas", StringComparison.Ordinal);
        var (asWritten, weak) = (Row("Nothing changed")[2], Row("50 %")[2]);

        Assert.DoesNotContain("measure it", weak, StringComparison.Ordinal);
        Assert.Equal(told, First(weak) > First(asWritten) * 0.9);

        static double First(string cell) =>
            double.Parse(
                cell[..cell.IndexOf("mL", StringComparison.Ordinal)].Replace("\u00a0", "", StringComparison.Ordinal).Trim(),
                System.Globalization.CultureInfo.InvariantCulture
            );
    }

    [Fact]
    public void A_held_batter_is_told_to_warm() =>
        Assert.Contains("After it stood in this kitchen: about", Card("held 40 min"), StringComparison.Ordinal);

    private static string Comparison => Pages["comparison.html"].QuerySelector("main")!.Text();

    private static string Card(string name) =>
        Pages["formula-cards.html"]
            .QuerySelectorAll(".card")
            .Single(card => card.QuerySelector("h2")!.Text().EndsWith(name, StringComparison.Ordinal))
            .Text();

    private static List<string> Row(string change) =>
        [
            .. Pages["comparison.html"]
                .QuerySelectorAll("table.changed tbody tr:not(.group)")
                .Single(row => row.Children[0].Text().Contains(change, StringComparison.Ordinal))
                .Children.Skip(1)
                .Select(cell => cell.Text().Trim()),
        ];
}
