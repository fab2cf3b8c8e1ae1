using ClassKit.CellFormulas.Sheets;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Requisitions;

public sealed class RequisitionWorkbookTests
{
    private const string File = "requisition.xlsx";
    private const int First = 10;

    // Ingredient, three breads, needed, in the store, pack, holds, price, a kilogram, packs, to pay, used, allergens
    private const int Needed = 5;
    private const int PerKilogram = 10;
    private const int Packs = 11;
    private const int ToPay = 12;
    private const int Used = 13;

    private static readonly WorkbookSnapshot Written = BuiltPack.Demo.Workbook(File);

    [Fact]
    public void LibreOffice_comes_to_the_values_that_are_stored()
    {
        var theirs = BuiltPack.Demo.Recalculated(File);
        var formulas = Written
            .Sheets.SelectMany(sheet =>
                sheet
                    .Cells.Where(cell => cell.Value.Formula is not null)
                    .Select(cell => new CellAddress(sheet.Name, cell.Key.Row, cell.Key.Column))
            )
            .ToList();
        Assert.True(formulas.Count > 60, $"{formulas.Count}");
        Assert.All(formulas, cell =>
        {
            var (ours, its) = (Written.Find(cell)!.Stored, theirs.Find(cell)!.Stored);
            if (ours.IsNumber)
                Assert.Equal(ours.Number, its.Number, 9);
            else
                Assert.Equal(ours.ToString(), its.ToString());
        });
    }

    /// <summary>
    /// Counted by hand: three ways of a bread among seven teams fall to 3, 2 and 2 of them, among two teams to one each; a control is a
    /// portion a team.
    /// </summary>
    [Theory]
    [InlineData(21, "7 3 2 2 3 2 2")]
    [InlineData(6, "2 1 1 1 1 1 1")]
    public void Teams_share_a_series_out_in_the_workbook_as_well(int students, string loads)
    {
        var changed = BuiltPack.LongMorning.Recalculated(File, $"w.active['B4'] = {students}");

        Assert.Equal(loads, string.Join(' ', Enumerable.Range(2, 7).Select(column => Value(changed, 8, column))));
        // Bread flour, what the control takes for four teams: the column behind allergens.
        var (before, after) = (BuiltPack.LongMorning.Workbook(File), changed);
        Assert.True(Value(before, First, 19) > 0);
        Assert.Equal(Value(before, First, 19) * students / 12, Value(after, First, 19), 1e-9);
    }

    [Fact]
    public void Sums_on_the_page_and_in_the_workbook_are_the_same()
    {
        var page = BuiltPack.Demo["requisition.html"];
        Assert.Equal(
            (double)page.QuerySelector("#buy ~ .wide tfoot td:nth-child(6)")!.Number(),
            Math.Round(Value(Written, Total, ToPay), 2, MidpointRounding.AwayFromZero)
        );
        foreach (var (index, row) in page.RowsBelow("buy").Index())
        {
            Assert.Equal(row.Children[0].Words(), Written.Find(new("Requisition", First + index, 1))!.Stored.Text);
            Assert.Equal(row.Children[4].Number(), (decimal)Value(Written, First + index, Packs));
            Assert.Equal(
                row.Children[5].Number(),
                (decimal)Math.Round(Value(Written, First + index, ToPay), 2, MidpointRounding.AwayFromZero)
            );
        }
    }

    /// <summary>
    /// By hand: 182 g a team for 6 teams are 1092 g, one bag of 5 kg at 6.80, of which 1092/5000 × 6.80 = 1.48512 is baked.
    /// </summary>
    [Fact]
    public void Flour_costs_what_it_costs_by_hand()
    {
        var flour = RowOf("Bread flour");
        Assert.Equal((1092, 1, 6.80), (Value(Written, flour, Needed), Value(Written, flour, Packs), Value(Written, flour, ToPay)));
        Assert.Equal(1.36, Value(Written, flour, PerKilogram), 9);
        Assert.Equal(1.48512, Value(Written, flour, Used), 9);
    }

    /// <summary>
    /// 48 students at four a team are 12 teams: twice of everything, and a tray of 30 eggs (1500 g) is no longer enough for 1860 g.
    /// </summary>
    [Fact]
    public void Twice_the_students_need_twice_the_ingredients_and_a_second_tray_of_eggs()
    {
        var twice = BuiltPack.Demo.Recalculated(File, "w['Requisition']['B4'] = 48");
        foreach (var row in Enumerable.Range(First, Lines))
        {
            // What is shown is shown once, however many teams there are; of a control every team gets a portion.
            var needed = 2 * (Value(Written, row, Needed) - Shown(Written, row)) + Shown(twice, row);
            Assert.Equal(needed, Value(twice, row, Needed), 6);
            Assert.Equal(Value(Written, row, Used) * needed / Value(Written, row, Needed), Value(twice, row, Used), 6);
        }
        // Of buttermilk the control alone takes some: 375 g of its batter for six teams, twice that for twelve (ControlTests, by hand).
        Assert.Equal(2 * Shown(Written, RowOf("Buttermilk")), Shown(twice, RowOf("Buttermilk")), 6);
        Assert.Equal((1, 2), (Value(Written, RowOf("Whole egg"), Packs), Value(twice, RowOf("Whole egg"), Packs)));
        Assert.Equal(Enumerable.Range(First, Lines).Sum(row => Value(twice, row, ToPay)), Value(twice, Total, ToPay), 9);
    }

    [Fact]
    public void A_price_and_what_is_in_the_store_are_followed()
    {
        var (flour, eggs) = (RowOf("Bread flour"), RowOf("Whole egg"));
        var changed = BuiltPack.Demo.Recalculated(File, $"s = w['Requisition']\ns['I{flour}'] = 9.80\ns['F{eggs}'] = 5000");
        Assert.Equal(9.80, Value(changed, flour, ToPay));
        Assert.Equal((0, 0), (Value(changed, eggs, Packs), Value(changed, eggs, ToPay)));
        Assert.Equal(Value(Written, Total, ToPay) + 3.00 - 7.20, Value(changed, Total, ToPay), 6);
    }

    /// <summary>
    /// A tenth more milk, (1890 g for the teams + 100 g to show) × 1.1 = 2189 g, is more than a jug of 2 L (2063 g by USDA's cup of 244 g).
    /// </summary>
    [Fact]
    public void Extra_for_spills_is_bought_too()
    {
        var extra = BuiltPack.Demo.Recalculated(File, "w['Requisition']['B7'] = 0.1");
        Assert.Equal(2189, Value(extra, RowOf("Whole milk"), Needed), 6);
        Assert.Equal((1, 2), (Value(Written, RowOf("Whole milk"), Packs), Value(extra, RowOf("Whole milk"), Packs)));
    }

    /// <summary>The last column; empty for what no demonstration takes.</summary>
    private static double Shown(WorkbookSnapshot workbook, int row) =>
        workbook.Find(new("Requisition", row, 15))?.Stored is { } stored ? stored.Number : 0;

    private static int Lines => BuiltPack.Demo["requisition.html"].RowsBelow("buy").Count();

    private static int Total => First + Lines;

    private static int RowOf(string ingredient) =>
        Enumerable.Range(First, Lines).Single(row => Written.Find(new("Requisition", row, 1))!.Stored.Text == ingredient);

    private static double Value(WorkbookSnapshot workbook, int row, int column) =>
        workbook.Find(new("Requisition", row, column))!.Stored.Number;
}
