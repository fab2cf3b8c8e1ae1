using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>Whether breads differ in more than their leavening is said as their formulas have it.</summary>
public sealed class OneDoughTests
{
    private const string Alike = "only what lifts it differs";
    private const string Unlike = "The breads differ in more than their leavening";

    private static string Words(BuiltPack pack) => pack["comparison.html"].Body!.Words();

    [Fact]
    public void Three_systems_are_called_three_systems()
    {
        foreach (var pack in (BuiltPack[])[BuiltPack.Demo, BuiltPack.Mountain, BuiltPack.NoOven])
        {
            Assert.Contains(Unlike, Words(pack), StringComparison.Ordinal);
            Assert.DoesNotContain(Alike, Words(pack), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void One_dough_is_called_one()
    {
        Assert.Contains(Alike, Words(BuiltPack.LongMorning), StringComparison.Ordinal);
        Assert.DoesNotContain(Unlike, Words(BuiltPack.LongMorning), StringComparison.Ordinal);
    }

    /// <summary>
    /// 70 of flour and 60 of a starter of equal parts are 100 of flour; 36 of water and the starter's 30 are 66, as in the two other
    /// doughs.
    /// </summary>
    [Fact]
    public void The_water_of_a_starter_counts_as_water_on_its_card()
    {
        var cards = BuiltPack.LongMorning["formula-cards.html"].QuerySelectorAll("article, section").Select(card => card.Words()).ToList();
        foreach (var bread in (string[])["Starter rolls", "Yeast rolls", "Powder rolls"])
            Assert.Contains(cards, card =>
                card.Contains(bread, StringComparison.Ordinal) && card.Contains("66 %", StringComparison.Ordinal)
            );
    }

    [Fact]
    public void The_control_stands_on_the_plan_and_at_the_bench() =>
        Assert.Contains("Nothing in it", BuiltPack.LongMorning["bench-plan.html"].Body!.Words(), StringComparison.Ordinal);

    /// <summary>Whoever waits for the sign of a roll that is ready undoes what the series changes.</summary>
    [Fact]
    public void A_step_whose_time_is_changed_goes_by_the_clock()
    {
        var cards = BuiltPack
            .LongMorning["formula-cards.html"]
            .QuerySelectorAll(".card")
            .ToDictionary(card => card.QuerySelector("h2")!.Words(), card => card.Words());

        Assert.Equal(
            ["Yeast rolls: over-proofed", "Yeast rolls: under-proofed"],
            cards.Where(card => card.Value.Contains("By the clock here", StringComparison.Ordinal)).Select(card => card.Key).Order()
        );
    }

    /// <summary>
    /// Two minutes a sample and two for the triangle: ten minutes do for four samples, and the lesson has seven breads. The triangle takes
    /// two that differ in one thing.
    /// </summary>
    [Fact]
    public void What_is_tasted_fits_the_time_and_a_triangle_is_of_one_change()
    {
        var sheet = BuiltPack.LongMorning["tasting.html"].Body!.Words();

        Assert.Equal(3, sheet.Split("Sample ").Length - 1);
        Assert.Contains("two minutes for a sample, and two for the triangle", sheet, StringComparison.Ordinal);
        Assert.Contains(
            "A is Yeast rolls, as written. B is Yeast rolls: under-proofed. The two bites that are alike on a plate are of one team's batch",
            BuiltPack.LongMorning["tasting-key.html"].Body!.Words().Replace('’', '\''),
            StringComparison.Ordinal
        );
    }

    /// <summary>Neither above nor in the working at the foot of the page.</summary>
    [Fact]
    public void What_nobody_can_predict_is_not_predicted()
    {
        Assert.Contains("Starter rolls: what it holds cannot be predicted", Words(BuiltPack.LongMorning), StringComparison.Ordinal);
        Assert.Contains(
            "Yeast rolls: over-proofed and Powder rolls: stood 40 min: what it holds cannot be predicted",
            Words(BuiltPack.LongMorning),
            StringComparison.Ordinal
        );
        Assert.Equal(3, Words(BuiltPack.LongMorning).Split("nothing is computed of it").Length - 1);
    }

    /// <summary>Every team gets a portion, whichever bread of the series it makes; rolls have neither cup nor tin.</summary>
    [Fact]
    public void Every_bread_of_the_series_has_the_control_beside_it_in_words_that_fit_a_roll()
    {
        var sheets = BuiltPack.LongMorning["observations.html"].QuerySelectorAll(".observed").ToList();

        Assert.Equal(4, sheets.Count);
        Assert.All(sheets, sheet =>
            Assert.Contains(
                "The control is the marked roll among your own: the same mixture without baking powder.",
                sheet.Words(),
                StringComparison.Ordinal
            )
        );
        Assert.All(sheets, sheet =>
            Assert.Equal(["Starter", "Yeast", "Powder"], sheet.QuerySelector(".sheet-grid")!.Breads().Select(bread => bread.Split(' ')[0]))
        );
        // Two breads as written and four changed ones, shared out among four teams: nobody makes two ways of one.
        Assert.Equal(
            6,
            sheets
                .SelectMany(sheet => sheet.QuerySelector(".sheet-grid")!.Breads())
                .Where(bread => !bread.StartsWith("Starter", StringComparison.Ordinal))
                .Distinct()
                .Count()
        );
        Assert.Contains(
            "Marked, among the powder rolls: same shape, same oven, same minute.",
            BuiltPack.LongMorning["formula-cards.html"].Body!.Words(),
            StringComparison.Ordinal
        );
    }

    /// <summary>The instructor builds it before the class: for every team, and in all.</summary>
    [Fact]
    public void Starters_stand_on_the_station_list_with_what_they_are_mixed_of()
    {
        var rows = BuiltPack
            .LongMorning["stations.html"]
            .RowsBelow("starters")
            .Select(row => (row.Children[2].Words(), Team: row.Children[3].Grams(), All: row.Children[4].Grams()))
            .ToList();

        Assert.Equal(3, rows.Count);
        Assert.All(rows, row => Assert.Equal(4 * row.Team, row.All));
    }

    /// <summary>
    /// Twelve hours, as the lesson has it, before the first team weighs it, which is the day before a class that begins at eight; the same
    /// moment and the same masses wherever an instructor looks.
    /// </summary>
    [Fact]
    public void Guide_requisition_and_run_sheet_say_when_starters_are_mixed_and_of_how_much()
    {
        var pack = BuiltPack.LongMorning;
        var line = pack["run-sheets.html"]
            .QuerySelectorAll("#instructor, section[aria-labelledby='instructor']")
            .First(section => section.LocalName == "section")
            .QuerySelectorAll("tbody tr")
            .Single(row => row.Children[3].Words() == "Mix the starter");
        var mixed = TimeOnly.Parse(line.Children[2].Words(), System.Globalization.CultureInfo.InvariantCulture);
        var weighed = TimeOnly.Parse(
            System.Text.RegularExpressions.Regex.Match(line.Children[5].Words(), @"\d\d:\d\d").Value,
            System.Globalization.CultureInfo.InvariantCulture
        );

        Assert.Equal(TimeSpan.FromHours(12), weighed - mixed);
        Assert.StartsWith("−", line.Children[1].Words().Replace('-', '−'), StringComparison.Ordinal);
        foreach (var page in new[] { "guide.html", "requisition.html" })
        {
            var told = pack[page].QuerySelector("p.starter")!.Words();
            Assert.Contains(
                $"mixed the day before at {mixed:HH\\:mm}, 12 h before it is weighed at {weighed:HH\\:mm}",
                told,
                StringComparison.Ordinal
            );
            Assert.All(pack["stations.html"].RowsBelow("starters"), row =>
                Assert.Contains(row.Children[4].Words(), told, StringComparison.Ordinal)
            );
        }
    }

    /// <summary>Whoever tastes a sourdough is asked for its sourness, and for a soapy taste where a bread has soda or powder.</summary>
    [Fact]
    public void Tasters_are_asked_for_what_the_breads_bring()
    {
        Assert.Contains("Sourness", BuiltPack.LongMorning["tasting.html"].Body!.Words(), StringComparison.Ordinal);
        Assert.DoesNotContain("Sourness", BuiltPack.Demo["tasting.html"].Body!.Words(), StringComparison.Ordinal);
    }
}
