using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Pages;
using ClassKit.Pages.Values;
using ClassKit.Workbooks.Requisitions;

namespace ClassKit.LessonPacks.Tests.Adapting;

/// <summary>
/// The same lesson for other classes: each change of the profile is seen where it matters, and nothing that is not published is offered.
/// </summary>
public sealed partial class AdaptingTests
{
    [Fact]
    public void More_students_in_more_teams_order_more_and_weigh_the_same()
    {
        var larger = BuiltPack.Adapted(
            "one-tin-three-lifts",
            "class.md",
            "students: 32",
            "teams: 8",
            "oven places: 8",
            "equipment: [8 burners, 16 proofing places]"
        );
        Assert.Equal(Weights(BuiltPack.Demo), Weights(larger));
        foreach (var (usual, more) in BuiltPack.Demo["requisition.html"].RowsBelow("buy").Zip(larger["requisition.html"].RowsBelow("buy")))
        {
            // Milk is shown once, however many teams there are; the control has a portion for each, weighed to the gram.
            var name = usual.QuerySelector("th")!.Words();
            var shown = name == "Whole milk" ? 100 : 0;
            var asked = (usual.QuerySelector("strong")!.Grams() - shown) / 6 * 8 + shown;
            Assert.InRange(more.QuerySelector("strong")!.Grams(), asked - 1, asked + 1);
        }
        Assert.Equal(9, larger["run-sheets.html"].QuerySelectorAll(".run-sheet").Length);

        static IEnumerable<string> Weights(BuiltPack pack) =>
            pack["formula-cards.html"].QuerySelectorAll(".card table strong").Select(weight => weight.Words());
    }

    /// <summary>What goes on the fine scale is in the scale's own grams: no kitchen has one that shows thousandths of an ounce.</summary>
    [Fact]
    public void A_class_with_us_units_sees_grams_of_what_the_fine_scale_weighs_alone()
    {
        var american = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "units: us");
        foreach (
            var cell in new[] { "formula-cards.html", "requisition.html", "observations.html" }
                .SelectMany(file => american[file].QuerySelectorAll("td, th, .card-facts"))
                .Where(cell => !Sold(cell))
        )
        {
            Assert.DoesNotMatch(@"\d (kg|mm)\b|°C", cell.Words());
            Assert.All(GramsIn().Matches(cell.Words()), grams =>
                Assert.True(double.Parse(grams.Groups[1].Value, CultureInfo.InvariantCulture) < 20, cell.Words())
            );
        }

        // How a pack is sold is its own name.
        static bool Sold(IElement cell) =>
            cell.Closest("table") is { } table
            && table.QuerySelector("thead th:nth-child(3)")?.Words() == "Sold as"
            && cell.PreviousElementSibling?.PreviousElementSibling is { PreviousElementSibling: null };

        // NIST SP 811: 182 g are 6.42 oz; the fine scale shows a tenth of a gram, more than 20 g go on the other
        var buns = american["formula-cards.html"]
            .QuerySelector(".card table")!
            .QuerySelectorAll("tbody tr")
            .ToDictionary(row => row.Children[0].Words(), row => row.QuerySelector("strong")!.Words());
        Assert.Equal(("6.42 oz", "10.9 g"), (buns["Bread flour"], buns["Granulated sugar"]));
        Assert.Equal(
            "6.42",
            american
                .Workbook("requisition.xlsx")
                .Find(new("Requisition", 10, 2))!
                .Stored.Number.ToString("0.00", CultureInfo.InvariantCulture)
        );
    }

    [Fact]
    public void A_metric_class_sees_no_us_units()
    {
        var metric = BuiltPack.Adapted("thin-air-quick-breads", "mountain-class.md", "units: metric");
        foreach (
            var cell in metric
                .Pages.Values.SelectMany(page => page.QuerySelectorAll("td, th, caption, dd"))
                .Where(cell => cell.Closest(".prose") is null && cell.QuerySelector(".prose") is null)
        )
            Assert.DoesNotMatch(@"°F|\d oz\b|\d lb\b", cell.Words());
    }

    /// <summary>
    /// By hand as in <c>ValuesInProseTests</c>, with flour, sugar and bowl at 18 °C: (27 × 609 - 18 × 249 - 4 × 44) / 319 = 37 °C, and a
    /// degree more by composition.
    /// </summary>
    [Fact]
    public void A_cooler_kitchen_takes_warmer_milk()
    {
        var cool = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "kitchen temperature: 18 °C");
        Assert.Contains(
            "whole milk and unsalted butter at 38 °C (100 °F)",
            cool["formula-cards.html"].Body!.Words(),
            StringComparison.Ordinal
        );
    }

    /// <summary>
    /// Colorado State University Extension and USDA, as reprinted: leavening 1/8 to 1/4 less at 5000 ft and 1/4 less at 7000 ft. By hand at
    /// 2100 m, 6890 ft: the least is 1/8 + 1/8 × 1890/2000 = 0.243, so that 4.5 % of powder becomes 3.4 %; one thing at a time, so that the
    /// oven stays.
    /// </summary>
    [Fact]
    public void Formulas_are_changed_for_the_altitude_only_where_the_class_asks_for_it()
    {
        var adjusted = BuiltPack.Adapted("thin-air-quick-breads", "mountain-class.md", "altitude formulas: adjusted");
        Assert.Equal(("4.5", "3.4"), (Powder(BuiltPack.Mountain), Powder(adjusted)));
        Assert.Contains("oven 180 °C", StepFacts(BuiltPack.Mountain), StringComparison.Ordinal);
        Assert.Contains("oven 180 °C", StepFacts(adjusted), StringComparison.Ordinal);
        foreach (var file in new[] { "index.html", "guide.html", "formula-cards.html" })
        {
            Assert.Contains("Changed for the altitude", adjusted[file].Body!.Words(), StringComparison.Ordinal);
            Assert.Contains("Colorado State University", adjusted[file].Body!.Words(), StringComparison.Ordinal);
            Assert.DoesNotContain("Changed for the altitude", BuiltPack.Mountain[file].Body!.Words(), StringComparison.Ordinal);
        }

        static string Powder(BuiltPack pack) =>
            Honey(pack)
                .QuerySelectorAll("tbody tr")
                .Single(row => row.Children[0].Words() == "Baking powder, double-acting")
                .Children[1]
                .Words();
        static string StepFacts(BuiltPack pack) => Honey(pack).QuerySelector(".method")!.Words();
        static IElement Honey(BuiltPack pack) =>
            pack["formula-cards.html"].QuerySelectorAll(".card").Single(card => card.QuerySelector("h2")!.Words() == "Honey loaves");
    }

    [Fact]
    public void Only_published_substitutions_are_offered_and_none_that_brings_the_same_allergen()
    {
        var needs = BuiltPack
            .Adapted("one-tin-three-lifts", "class.md", "allergies: [egg, milk, wheat]")["guide.html"]
            .QuerySelectorAll("#needs ~ .together:has(h3)")
            .Take(3)
            .ToDictionary(
                need => need.QuerySelector("h3")!.Words().Split(' ')[0],
                need =>
                    need.QuerySelectorAll("li")
                        .ToDictionary(bread => bread.QuerySelector("strong")!.Words().TrimEnd('.'), bread => bread.Words())
            );

        // Published for what soda and powder raise, two eggs at most: the muffins, not the popovers or buns
        Assert.Contains("for each egg 1½ tablespoons of oil", needs["Egg"]["Buttermilk muffins"], StringComparison.Ordinal);
        Assert.Contains("PowerUp for Kids", needs["Egg"]["Buttermilk muffins"], StringComparison.Ordinal);
        Assert.Contains(
            "Instead of whole egg: nothing published that fits. So no other version of it is offered.",
            needs["Egg"]["Popovers"],
            StringComparison.Ordinal
        );

        // The stand-in takes baking powder, whose starch may be of wheat: another need of the class
        Assert.Contains(
            "baking powder, double-acting (its starch may be of wheat)",
            needs["Egg"]["Buttermilk muffins"].Split("Not known of it")[1],
            StringComparison.Ordinal
        );

        // Butter and milk have stand-ins, buttermilk's only one is yogurt, which is milk too
        Assert.Contains(
            "Instead of whole milk: for each cup of milk a cup of water",
            needs["Milk"]["Batter buns"],
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Instead of buttermilk: nothing published that fits.",
            needs["Milk"]["Buttermilk muffins"],
            StringComparison.Ordinal
        );
        // What a demonstration weighs out is told of as well, and has no stand-in.
        Assert.All(needs["Wheat"].Values.Where(told => !told.StartsWith("Shown: ", StringComparison.Ordinal)), bread =>
            Assert.Matches("Instead of (all-purpose|bread) flour: nothing published that fits", bread)
        );
        Assert.Equal(3, needs["Wheat"].Values.Count(told => told.Contains("Instead of", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_flour_that_is_not_there_is_marked_with_what_is_published_for_it()
    {
        var plain = BuiltPack.Adapted("thin-air-quick-breads", "mountain-class.md", "flours: [All-purpose flour]");
        var cards = plain["formula-cards.html"]
            .QuerySelectorAll(".card")
            .ToDictionary(card => card.QuerySelector("h2")!.Words(), card => card.Words());
        Assert.Contains(
            "The kitchen has no cake flour. Published: for each cup of cake flour a cup less 2 tablespoons of sifted all-purpose flour. (Summit County Farm Bureau",
            cards["Butter cakes"],
            StringComparison.Ordinal
        );
        Assert.Contains(
            "The kitchen has no whole wheat flour, and no substitution by what it has is published: buy it.",
            cards["Honey loaves"],
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("The kitchen has no", cards["Soda bread"], StringComparison.Ordinal);
    }

    /// <summary>The buns alone need 113 min at their shortest, and 35 min are set aside: in 120 min something has to go.</summary>
    [Fact]
    public void In_a_shorter_period_the_plan_changes_and_says_what_was_cut()
    {
        var shorter = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "period: 120 min");
        var cut = shorter["bench-plan.html"].QuerySelector(".note")!.Words();
        Assert.StartsWith("All of the lesson does not fit 120 min.", cut, StringComparison.Ordinal);
        Assert.Contains("Batter buns", cut, StringComparison.Ordinal);
        foreach (var file in new[] { "index.html", "guide.html" })
            Assert.Contains(cut, shorter[file].Body!.Words(), StringComparison.Ordinal);

        var last = shorter["bench-plan.html"]
            .QuerySelectorAll("table:has(.group) tbody tr:not(.group)")
            .Max(row => PageText.Clock(row.Children[2].Words()));
        Assert.True(last <= 120 - 25, $"{last}");
    }

    /// <summary>Done ahead or left to the instructor: the numbers on the sheets stay those of the card.</summary>
    [Fact]
    public void Steps_keep_the_numbers_of_the_card_when_some_are_done_before()
    {
        var shorter = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "period: 120 min");
        var cards = shorter["formula-cards.html"]
            .QuerySelectorAll(".card")
            .ToDictionary(
                card => card.QuerySelector("h2")!.Words(),
                card => card.QuerySelectorAll(".method > li strong").Select(step => step.Words()).ToList()
            );
        foreach (var body in shorter["bench-plan.html"].QuerySelectorAll("table:has(.group) tbody"))
        {
            foreach (var row in body.QuerySelectorAll("tr:not(.group)"))
            {
                var (number, name) = (
                    int.Parse(row.Children[0].Words().Split('.')[0], CultureInfo.InvariantCulture),
                    row.Children[0].Words().Split(". ", 2)[1]
                );
                Assert.Equal(name, cards[body.QuerySelector(".group")!.Words()][number - 1]);
            }
        }
    }

    /// <summary>Both slow breads are done ahead as far as they keep; 90 min hold the rest.</summary>
    [Fact]
    public void In_a_much_shorter_period_two_breads_are_done_ahead()
    {
        var cut = BuiltPack
            .Adapted("one-tin-three-lifts", "class.md", "period: 100 min")["bench-plan.html"]
            .QuerySelector(".note")!
            .Words();
        Assert.Contains("Do the Batter buns the day before", cut, StringComparison.Ordinal);
        Assert.Contains("Do the Popovers the day before", cut, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_instructor_makes_alone_is_ordered_once()
    {
        var pack = PackProse.InWords(new(BuiltPack.DemoPack.LeftToInstructor(["popovers"]), new(null, null, null, [], null)));
        var pages = HtmlPages.Pack(pack).ToDictionary(page => page.FileName, page => new HtmlParser().ParseDocument(page.Html));
        var heads = pages["requisition.html"]
            .QuerySelector("#order ~ .wide thead")!
            .QuerySelectorAll("th")
            .Select(head => head.Words())
            .ToList();
        foreach (var card in pages["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var isLeft = card.QuerySelector("h2")!.Words() == "Popovers";
            var column = heads.IndexOf(card.QuerySelector("h2")!.Words());
            Assert.Equal(isLeft, card.QuerySelector(".card-facts")!.Words().Contains("the instructor’s load", StringComparison.Ordinal));
            foreach (
                var rows in card.QuerySelectorAll("table tbody tr")
                    .GroupBy(row => row.Children[0].Words(), row => row.QuerySelector("strong")!.Grams())
            )
            {
                var line = pages["requisition.html"].RowsBelow("order").Single(line => line.Children[0].Words() == rows.Key);
                Assert.Equal(rows.Sum() * (isLeft ? 1 : 6), line.Children[column].Grams());
            }
        }

        var workbook = BuiltPack.Recalculated(RequisitionWriter.Write(pack)).FindSheet("Requisition")!;
        var needed = pages["requisition.html"].RowsBelow("buy").Select(row => (double)row.QuerySelector("strong")!.Grams()).ToList();
        Assert.Equal(needed, Enumerable.Range(10, needed.Count).Select(row => Math.Round(workbook.Cells[new(row, 5)].Stored.Number, 6)));
    }

    [GeneratedRegex(@"([\d.]+) g\b")]
    private static partial Regex GramsIn();
}
