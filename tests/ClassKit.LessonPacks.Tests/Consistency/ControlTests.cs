using ClassKit.Baking.Ingredients;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>
/// A control differs from what it is held against in one thing, which is left out: common practice of experiments, no source. It stands in
/// plan and requisition like everything that is done and taken, and not in a text alone.
/// </summary>
public sealed class ControlTests
{
    private const string Name = "A dozen strokes, and a control";

    public static TheoryData<string> OfThreeLifts => Kitchens.OfThreeLifts;

    [Theory]
    [MemberData(nameof(OfThreeLifts))]
    public void It_has_its_minute_in_the_plan_and_comes_before_anybody_mixes(string kitchen)
    {
        var plan = Kitchens.Of(kitchen)["bench-plan.html"];
        var shown = plan.QuerySelectorAll("table.fit tbody tr").Single(row => row.Under("What is shown") == Name);
        var mixed = plan.QuerySelectorAll("table:has(.group) tbody")
            .Where(body => body.QuerySelector(".group")!.Words() == "Buttermilk muffins")
            .SelectMany(body => body.QuerySelectorAll("tr"))
            .Where(row => row.Children[0].Words() == "5. Mix")
            .Min(row => row.MinuteUnder("From"));
        Assert.True(shown.MinuteUnder("To") <= mixed);
    }

    /// <summary>What is set out is the muffins' formula without soda and powder, a portion and the loss for each team.</summary>
    [Theory]
    [InlineData("demo", 6)]
    [InlineData("cool kitchen", 4)]
    [InlineData("one oven, two teams", 2)]
    public void What_is_weighed_out_is_the_muffins_without_their_leavening(string kitchen, int teams)
    {
        var pack = Kitchens.Of(kitchen);
        var setOut = pack["stations.html"]
            .QuerySelectorAll("#instructor ~ .wide table")[0]
            .QuerySelectorAll("tbody tr")
            .Single(row => row.Children[0].Words() == Name)
            .Under("Set out")
            .Split(", ")
            .Select(item => item.Split(" of "))
            .Where(item => item.Length == 2 && item[0].EndsWith(" g", StringComparison.Ordinal))
            .ToDictionary(item => item[1], item => double.Parse(item[0].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture));
        var card = pack["formula-cards.html"]
            .QuerySelectorAll(".card")
            .Single(card => card.QuerySelector("h2")!.Words() == "Buttermilk muffins")
            .QuerySelector("table")!
            .QuerySelectorAll("tbody tr")
            .Where(row =>
                IngredientCatalog.All.Single(known => known.Name == row.Children[0].Words()).Role != IngredientRole.ChemicalLeavening
            )
            .ToDictionary(
                row => row.Children[0].Words().ToLowerInvariant(),
                row => double.Parse(row.Children[1].Words(), System.Globalization.CultureInfo.InvariantCulture)
            );

        Assert.Equal(card.Keys.Order(StringComparer.Ordinal), setOut.Keys.Order(StringComparer.Ordinal));
        Assert.All(card, line =>
            Assert.InRange(
                setOut[line.Key],
                setOut["all-purpose flour"] * line.Value / 100 - 1,
                setOut["all-purpose flour"] * line.Value / 100 + 1
            )
        );
        Assert.InRange(setOut.Values.Sum(), teams * 60, teams * 60 / 0.96 + 4);
    }

    [Fact]
    public void It_is_ordered()
    {
        // 375 g of batter without 2.5 % and 0.7 % of leavening, of 256.2 % in all: 146 g of flour more than the teams weigh; by hand.
        var weighed =
            BuiltPack
                .Demo["formula-cards.html"]
                .QuerySelectorAll(".card table tbody tr")
                .Where(row => row.Children[0].Words() == "Buttermilk")
                .Sum(row => row.QuerySelector("strong")!.Grams()) * 6;
        var ordered = BuiltPack
            .Demo["requisition.html"]
            .RowsBelow("buy")
            .Single(row => row.QuerySelector("th")!.Words() == "Buttermilk")
            .QuerySelector("strong")!
            .Grams();
        Assert.InRange((double)(ordered - weighed), 375 / 2.562 * 0.95 - 2, 375 / 2.562 * 0.95 + 2);
    }

    /// <summary>A control that nobody writes down shows nothing: it has its column, its drawing and its card.</summary>
    [Theory]
    [MemberData(nameof(OfThreeLifts))]
    public void It_is_measured_drawn_and_weighed_from_a_card_of_its_own(string kitchen)
    {
        var pack = Kitchens.Of(kitchen);
        var sheet = pack["observations.html"].QuerySelector(".observed")!;
        var grid = sheet.QuerySelector(".sheet-grid")!;
        var pieces = grid.QuerySelectorAll("thead tr:last-child th").Select(head => head.Words()).ToList();
        Assert.Equal("Buttermilk muffins", grid.Breads()[^1]);
        Assert.Equal("Control", pieces[^1]);
        Assert.Single(pieces, "Control");
        Assert.All(grid.Breads(), bread =>
            Assert.Equal(bread == "Buttermilk muffins" ? 5 : 4, grid.Of(bread).Single(row => row.Row == "Height").Cells.Count)
        );
        Assert.Equal("The control, cut", sheet.QuerySelectorAll(".drawing")[^1].Words());

        var card = pack["formula-cards.html"].QuerySelector(".control-card")!;
        var demonstration = pack["stations.html"]
            .QuerySelectorAll("#instructor ~ .wide table")[0]
            .QuerySelectorAll("tbody tr")
            .Single(row => row.Children[0].Words() == Name)
            .Under("Set out");
        // In ounces a scale's digits and an order's differ.
        foreach (
            var row in card.QuerySelectorAll("tbody tr")
                .Where(row =>
                    row.QuerySelector("strong")!.Words() is var weighed
                    && weighed.EndsWith(" g", StringComparison.Ordinal)
                    && !weighed.Contains(".0 ", StringComparison.Ordinal)
                )
        )
            Assert.Contains(
                $"{row.QuerySelector("strong")!.Words()} of {row.Children[0].Words().ToLowerInvariant()}",
                demonstration,
                StringComparison.Ordinal
            );
        Assert.Contains("Raw flour", card.Words(), StringComparison.Ordinal);
    }

    /// <summary>
    /// What soda and powder make is missing: by the model the control stands lower, and it is not flat, since beaten-in air and vapour lift
    /// it.
    /// </summary>
    [Fact]
    public void It_is_expected_to_rise_less_than_the_muffin_and_more_than_its_batter()
    {
        var heights = BuiltPack.Demo["observations.html"].Expected("Buttermilk muffins")["Height"];
        var (muffin, control) = (Ends(heights[0]), Ends(heights[^1]));
        Assert.True(control.High < muffin.High && control.Low <= muffin.Low && control.High > control.Low);
        // 60 g of batter of some 1.15 g/mL in a cup of 51 mm at the bottom and 70 mm at its top, 35 mm deep, stand some 20 mm high; by
        // hand.
        Assert.True(control.High > 20);

        static (int Low, int High) Ends(string height)
        {
            var ends = height.Split(' ')[0].Split('–').Select(int.Parse).ToList();
            return (ends[0], ends[^1]);
        }
    }

    /// <summary>The instructor mixes and fills a cup in every team's tin: a minute for each beside the strokes.</summary>
    [Fact]
    public void There_is_time_to_portion_it_to_every_team()
    {
        var shown = BuiltPack
            .Demo["bench-plan.html"]
            .QuerySelectorAll("table.fit tbody tr")
            .Single(row => row.Under("What is shown") == Name);
        Assert.True(shown.MinuteUnder("To") - shown.MinuteUnder("From") > 6);
    }
}
