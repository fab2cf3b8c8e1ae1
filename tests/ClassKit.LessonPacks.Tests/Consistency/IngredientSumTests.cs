using System.Text.RegularExpressions;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>
/// Every ingredient, summed over all that names it: the cards that teams weigh from, the page and the workbook that the class orders from.
/// </summary>
public sealed partial class IngredientSumTests
{
    private const int Teams = 6;
    private const int Breads = 3;

    /// <summary>What is weighed out for demonstrations, by the instructor's table of the station lists.</summary>
    private static readonly Dictionary<string, decimal> Shown = BuiltPack
        .Demo["stations.html"]
        .QuerySelectorAll("#instructor ~ .wide table")[0]
        .QuerySelectorAll("tbody td:nth-child(3)")
        .SelectMany(cell => ShownAmount().Matches(cell.Words()))
        .GroupBy(match => match.Groups["name"].Value, StringComparer.OrdinalIgnoreCase)
        .ToDictionary(
            matches => matches.Key,
            matches => matches.Sum(match => decimal.Parse(match.Groups["grams"].Value, System.Globalization.CultureInfo.InvariantCulture)),
            StringComparer.OrdinalIgnoreCase
        );

    /// <summary>What the six teams weigh, by the numbers printed on their cards, and what is shown besides.</summary>
    private static readonly Dictionary<string, decimal> Weighed = BuiltPack
        .Demo["formula-cards.html"]
        .QuerySelectorAll(".card table tbody tr")
        .GroupBy(row => row.QuerySelector("th")!.Words(), row => row.QuerySelector("strong")!.Grams())
        .ToDictionary(rows => rows.Key, rows => rows.Sum() * Teams + Shown.GetValueOrDefault(rows.Key));

    [Fact]
    public void What_the_teams_weigh_is_what_is_bought()
    {
        Assert.NotEmpty(Weighed);
        // Milk to warm, and the control's flour, buttermilk, egg, butter, sugar and salt.
        Assert.Equal(7, Shown.Count);
        Assert.Equal(
            Sorted(Weighed),
            Sorted(
                BuiltPack
                    .Demo["requisition.html"]
                    .RowsBelow("buy")
                    .ToDictionary(row => row.QuerySelector("th")!.Words(), row => row.QuerySelector("strong")!.Grams())
            )
        );
    }

    [Fact]
    public void What_each_bread_takes_adds_up_to_what_is_bought()
    {
        var rows = BuiltPack.Demo["requisition.html"].RowsBelow("order").ToList();
        Assert.Equal(
            Sorted(Weighed),
            Sorted(rows.ToDictionary(row => row.QuerySelector("th")!.Words(), row => row.QuerySelector("strong")!.Grams()))
        );
        Assert.All(rows, row =>
            Assert.Equal(
                row.QuerySelector("strong")!.Grams(),
                row.QuerySelectorAll("td").Take(Breads + 1).Where(cell => cell.Words() != "–").Sum(cell => cell.Grams())
            )
        );
    }

    [Fact]
    public void The_workbook_orders_what_the_page_orders()
    {
        var sheet = BuiltPack.Demo.Workbook("requisition.xlsx").FindSheet("Requisition")!;
        var ordered = Enumerable
            .Range(10, Weighed.Count)
            .ToDictionary(
                row => sheet.Cells[new(row, 1)].Stored.Text,
                row => (decimal)Math.Round(sheet.Cells[new(row, Breads + 2)].Stored.Number, 6)
            );
        Assert.Equal(Sorted(Weighed), Sorted(ordered));
    }

    [Fact]
    public void A_bread_s_card_and_its_column_of_the_requisition_agree_line_by_line()
    {
        var heads = BuiltPack
            .Demo["requisition.html"]
            .QuerySelector("#order ~ .wide thead")!
            .QuerySelectorAll("th")
            .Select(head => head.Words())
            .ToList();
        foreach (var card in BuiltPack.Demo["formula-cards.html"].QuerySelectorAll(".card"))
        {
            var column = heads.IndexOf(card.QuerySelector("h2")!.Words());
            Assert.True(column > 0);
            var taken = BuiltPack
                .Demo["requisition.html"]
                .RowsBelow("order")
                .Where(row => row.Children[column].Words() != "–")
                .ToDictionary(row => row.Children[0].Words(), row => row.Children[column].Grams());
            Assert.Equal(
                Sorted(
                    card.QuerySelectorAll("table tbody tr")
                        .GroupBy(row => row.QuerySelector("th")!.Words(), row => row.QuerySelector("strong")!.Grams() * Teams)
                        .ToDictionary(rows => rows.Key, rows => rows.Sum())
                ),
                Sorted(taken)
            );
        }
    }

    [GeneratedRegex(@"(?<grams>[0-9.]+) g of (?<name>[^,]+)")]
    private static partial Regex ShownAmount();

    private static IEnumerable<(string, decimal)> Sorted(Dictionary<string, decimal> amounts) =>
        amounts.Select(amount => (amount.Key, amount.Value)).OrderBy(amount => amount.Key, StringComparer.Ordinal);
}
