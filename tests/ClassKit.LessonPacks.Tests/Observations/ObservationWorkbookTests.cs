using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.CellFormulas.Sheets;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Observations;

public sealed partial class ObservationWorkbookTests
{
    private const string File = "observations.xlsx";
    private const string Mixed = "Batter or dough, mixed";

    // Measure, unit, low, typical, high, three pieces, mean, difference, question
    private const int Low = 3;
    private const int Typical = 4;
    private const int High = 5;
    private const int Mean = 9;
    private const int Difference = 10;
    private const int Asks = 11;

    /// <summary>A guess for every bread: what is expected shows then.</summary>
    private const string Guess = """
        for r in range(1, 90):
            if w['Observations'].cell(r, 1).value == 'My guess of the height': w['Observations'].cell(r, 3).value = 50

        """;

    private static readonly WorkbookSnapshot Written = BuiltPack.Demo.Recalculated(File, Guess);

    private static readonly Lazy<WorkbookSnapshot> Measured = new(() =>
        BuiltPack.Demo.Recalculated(
            File,
            Guess
                + $"""
                s = w['Observations']
                for column, mass, height in (('F', 66, 40), ('G', 64, 42), ('H', 65, 44)):
                    s[column + '{Row("Mass before")}'] = mass
                    s[column + '{Row("Height")}'] = height
                s['F{Row("Mass after")}'] = 55
                s['F{Row("Width at its widest")}'] = 120
                """
        )
    );

    /// <summary>
    /// Whoever reads what is expected does not guess any more: the sheet says it once a guess is typed, and then of that bread alone.
    /// </summary>
    [Fact]
    public void What_is_expected_shows_when_a_guess_is_typed()
    {
        var blank = BuiltPack.Demo.Workbook(File);
        var judged = Enumerable
            .Range(1, 70)
            .Where(row => Cell(blank, row, Asks)?.Formula is not null && Cell(blank, row, 1)!.Stored.Text != Mixed)
            .ToList();
        Assert.Equal(24, judged.Count);
        foreach (var row in judged)
            Assert.All(Enumerable.Range(Low, 3), column => Assert.Equal("", Cell(blank, row, column)!.Stored.Text));
        var one = BuiltPack.Demo.Recalculated(File, $"w['Observations']['C{Row("My guess of the height")}'] = 50");
        Assert.Equal(6, judged.Count(row => Cell(one, row, Typical)!.Stored.IsNumber));
        Assert.All(judged, row => Assert.True(Cell(Written, row, Typical)!.Stored.IsNumber));
    }

    /// <summary>A control is written down where its bread is, one piece a team, and lacks in height what was left out.</summary>
    [Fact]
    public void The_control_has_its_own_rows_and_is_expected_to_stand_lower()
    {
        var control = Enumerable
            .Range(1, 90)
            .Single(row => Cell(Written, row, 1)?.Stored.Text == "Control: buttermilk muffins without baking powder and baking soda");
        var (bread, own) = (Heights().Last(row => row < control), Heights().Single(row => row > control));
        Assert.True(Cell(Written, own, Typical)!.Stored.Number < Cell(Written, bread, Low)!.Stored.Number + 5);
        Assert.True(Cell(Written, own, Typical)!.Stored.Number < Cell(Written, bread, Typical)!.Stored.Number);

        static IEnumerable<int> Heights() => Enumerable.Range(1, 90).Where(row => Cell(Written, row, 1)?.Stored.Text == "Height");
    }

    [Fact]
    public void Nothing_measured_asks_nothing()
    {
        foreach (var row in Enumerable.Range(1, 70).Where(row => Cell(Written, row, Asks)?.Formula is not null))
            Assert.Equal(
                ("", "", ""),
                (Cell(Written, row, Mean)!.Stored.Text, Cell(Written, row, Difference)!.Stored.Text, Cell(Written, row, Asks)!.Stored.Text)
            );
    }

    [Fact]
    public void The_difference_is_that_of_the_mean_to_what_was_predicted()
    {
        Assert.Equal(65, Number(Measured.Value, "Mass before", Mean), 9);
        Assert.Equal(5, Number(Measured.Value, "Mass before", Difference), 9);
        Assert.Equal(42 - Number(Written, "Height", Typical), Number(Measured.Value, "Height", Difference), 9);
    }

    /// <summary>
    /// What is left is predicted from the mass that was measured, not from the card: 65 g less 9.8 % to 13 % are 56.55 g to 58.63 g, and a
    /// scale shows whole grams; 57 g less 13 % are 49.59 g.
    /// </summary>
    [Fact]
    public void What_is_lost_is_lost_from_what_was_weighed()
    {
        Assert.Equal(50, Number(Written, "Mass after", Low));
        Assert.Equal((57.0, 59.0), (Number(Measured.Value, "Mass after", Low), Number(Measured.Value, "Mass after", High)));
    }

    /// <summary>By hand: the first piece weighed 66 g before and 55 g after, a loss of 11/66.</summary>
    [Fact]
    public void The_bake_loss_is_worked_out_from_both_masses_of_a_piece() =>
        Assert.Equal(100 * 11 / 66.0, Number(Measured.Value, "Bake loss", Mean), 1e-9);

    [Fact]
    public void Every_bread_of_both_lessons_has_an_expected_height_and_a_bake_loss()
    {
        foreach (var pack in new[] { BuiltPack.Demo, BuiltPack.Mountain })
        foreach (var bread in pack["observations.html"].QuerySelector(".expects")!.Breads())
        foreach (var measure in new[] { "Height", "Width at its widest", "Bake loss" })
            Assert.Matches(@"^\d+–\d+ ", pack["observations.html"].Expected(bread)[measure][0]);
    }

    [Fact]
    public void Less_and_more_ask_their_own_questions()
    {
        Assert.StartsWith("Less. Had the batter reached the rim", Text(Measured.Value, "Height"), StringComparison.Ordinal);
        Assert.StartsWith("More. Did it run over the rim", Text(Measured.Value, "Width at its widest"), StringComparison.Ordinal);
        Assert.StartsWith("More. Was the bowl scraped", Text(Measured.Value, "Mass before"), StringComparison.Ordinal);
        Assert.StartsWith("Less. Did they bake longer", Text(Measured.Value, "Mass after"), StringComparison.Ordinal);
    }

    /// <summary>What a card asks of the mix stands beside what the probe shows, with the same band.</summary>
    [Theory]
    [InlineData("demo")]
    [InlineData("mountain")]
    [InlineData("cool kitchen")]
    [InlineData("high and warm")]
    public void The_band_of_the_mix_stands_beside_what_is_measured(string kitchen)
    {
        var pack = Kitchens.Of(kitchen);
        var workbook = pack.Workbook(File);
        var rows = Enumerable.Range(1, 60).Where(row => Cell(workbook, row, 1)?.Stored.Text == Mixed).ToList();
        var grid = pack["observations.html"].QuerySelector(".sheet-grid")!;
        var pages = grid.Breads()
            .Select(bread => Right().Match(grid.Of(bread).Single(row => row.Row == "Just mixed").Cells[0].Words()))
            .ToList();
        Assert.Equal(pages.Count, rows.Count);
        foreach (var (row, page) in rows.Zip(pages))
            Assert.Equal((page.Groups["low"].Value, page.Groups["high"].Value), (Shown(workbook, row, Low), Shown(workbook, row, High)));
    }

    /// <summary>Where the kitchen is high, every expected value has the one of sea level right below it, as on the page.</summary>
    [Fact]
    public void Sea_level_stands_below_what_is_expected_here()
    {
        var workbook = BuiltPack.Mountain.Recalculated(File, Guess);
        var below = Enumerable
            .Range(1, 60)
            .Where(row => Cell(workbook, row, 1)?.Stored.Text.Trim().StartsWith("at sea level", StringComparison.Ordinal) == true)
            .Select(row => (Shown(workbook, row, Low), Shown(workbook, row, High)))
            .ToList();
        var page = BuiltPack.Mountain["observations.html"];
        var column = page.QuerySelector(".expects")!
            .Breads()
            .SelectMany(bread => page.Expected(bread).Values)
            .Select(texts => texts[1].Split(' ')[0].Split('–'))
            .Select(ends => (ends[0], ends[^1]))
            .ToList();
        Assert.Equal(18, below.Count);
        Assert.Equal(column, below);
        Assert.DoesNotContain(Enumerable.Range(1, 60), row =>
            Cell(Written, row, 1)?.Stored.Text.Contains("at sea level", StringComparison.Ordinal) == true
        );
    }

    [Fact]
    public void What_is_within_the_range_is_as_predicted()
    {
        var height = Number(Written, "Height", Typical);
        var within = BuiltPack.Demo.Recalculated(
            File,
            Guess + FormattableString.Invariant($"w['Observations']['F{Row("Height")}'] = {height}")
        );
        Assert.Equal("As expected.", Text(within, "Height"));
    }

    [Fact]
    public void The_sheet_to_fill_in_by_hand_expects_the_same()
    {
        var page = BuiltPack.Demo["observations.html"];
        var rows = page.QuerySelector(".expects")!.Breads().SelectMany(bread => page.Expected(bread)).ToList();
        var control = Enumerable
            .Range(1, 90)
            .First(row => Cell(Written, row, 1)?.Stored.Text.StartsWith("Control", StringComparison.Ordinal) == true);
        var measured = Enumerable
            .Range(1, control - 1)
            .Where(row => Cell(Written, row, Asks)?.Formula is not null && Cell(Written, row, 1)!.Stored.Text != Mixed)
            .ToList();
        Assert.Equal(18, rows.Count);
        Assert.Equal(measured.Count, rows.Count);
        foreach (var (row, at) in rows.Zip(measured))
        {
            var ends = row.Value[0].Split(' ')[0].Split('–').Select(int.Parse).ToList();
            Assert.StartsWith(Cell(Written, at, 1)!.Stored.Text, row.Key, StringComparison.Ordinal);
            Assert.Equal((ends[0], ends[^1]), (Rounded(at, Low), Rounded(at, High)));
        }

        static int Rounded(int row, int column) =>
            (int)Math.Round(Cell(Written, row, column)!.Stored.Number, MidpointRounding.AwayFromZero);
    }

    private static string Shown(WorkbookSnapshot workbook, int row, int column) =>
        Math.Round(Cell(workbook, row, column)!.Stored.Number, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex("right from (?<low>[0-9]+)(–| °[CF].*? to )(?<high>[0-9]+)")]
    private static partial Regex Right();

    /// <summary>The first table is that of the first bread.</summary>
    private static int Row(string measure) => Enumerable.Range(1, 40).First(row => Cell(Written, row, 1)?.Stored.Text == measure);

    private static double Number(WorkbookSnapshot workbook, string measure, int column) =>
        Cell(workbook, Row(measure), column)!.Stored.Number;

    private static string Text(WorkbookSnapshot workbook, string measure) => Cell(workbook, Row(measure), Asks)!.Stored.Text;

    private static CellContent? Cell(WorkbookSnapshot workbook, int row, int column) => workbook.Find(new("Observations", row, column));
}
