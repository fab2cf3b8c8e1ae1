using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Sensory;

public sealed class TastingPagesTests
{
    private const string Sheet = "tasting.html";
    private const string Key = "tasting-key.html";

    public static TheoryData<string> Packs => ["demo", "mountain"];

    [Theory]
    [MemberData(nameof(Packs))]
    public void The_students_sheet_names_no_bread_and_the_key_names_the_bread_of_every_number(string name)
    {
        var pack = Of(name);
        var breads = pack["index.html"]
            .QuerySelectorAll("table caption")
            .Single(caption => caption.Words().StartsWith("What each bread is declared to hold", StringComparison.Ordinal))
            .ParentElement!.QuerySelectorAll("tbody th")
            .Select(cell => cell.Words())
            .Where(name => !name.StartsWith("Shown: ", StringComparison.Ordinal))
            .ToList();
        var codes = pack[Sheet]
            .QuerySelectorAll("thead th")
            .Select(cell => cell.Words())
            .Where(head => head.StartsWith("Sample ", StringComparison.Ordinal))
            .Select(head => head["Sample ".Length..])
            .ToList();

        Assert.Equal(breads.Count, codes.Count);
        Assert.All(breads, bread =>
            Assert.DoesNotContain(bread, pack[Sheet].QuerySelector("main")!.Words(), StringComparison.OrdinalIgnoreCase)
        );
        var rows = pack[Key]
            .QuerySelectorAll("table")[0]
            .QuerySelectorAll("tbody tr")
            .ToDictionary(row => row.Children[0].Words(), row => row.Children[1].Words());
        Assert.Equal(codes, rows.Keys);
        Assert.Equal(breads.Order(), rows.Values.Order());
    }

    /// <summary>A number hides what is in a sample, so everything that any of them is declared to hold stands on the sheet.</summary>
    [Theory]
    [MemberData(nameof(Packs))]
    public void The_students_sheet_names_every_allergen_that_any_sample_is_declared_to_hold(string name)
    {
        var pack = Of(name);
        var words = pack[Sheet].Body!.Words();
        foreach (var row in pack[Key].QuerySelectorAll("table")[0].QuerySelectorAll("tbody tr"))
            Assert.All(row.Children[2].Words().Split(", "), allergen => Assert.Contains(allergen, words, StringComparison.Ordinal));
        Assert.Contains("does not taste", words, StringComparison.Ordinal);
        Assert.Contains("Local codes", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_of_the_key_is_that_of_the_standard()
    {
        // ISO 4120:2004, Table A.1: 24 answers take 13, 15 and 16 right ones; 30 take 15, 17 and 19.
        var cells = Of("demo")[Key]
            .QuerySelectorAll("table")[^1]
            .QuerySelectorAll("tbody tr")
            .Select(row => string.Join(' ', row.Children.Select(cell => cell.Words())))
            .ToList();

        Assert.Contains(cells, row => row.Contains("24 13 15 16", StringComparison.Ordinal));
        Assert.Contains(cells, row => row.Contains("30 15 17 19", StringComparison.Ordinal));
    }

    /// <summary>Whoever is asked for the taste of yeast looks for it: it is asked only where a bread has any.</summary>
    [Fact]
    public void Nobody_is_asked_for_what_no_bread_holds()
    {
        Assert.Contains("yeast", Of("demo")[Sheet].QuerySelector("main")!.Words(), StringComparison.Ordinal);
        Assert.DoesNotContain("yeast", Of("mountain")[Sheet].QuerySelector("main")!.Words(), StringComparison.Ordinal);
        Assert.DoesNotContain(BuiltPack.Texts(Of("mountain").Bytes("tasting.xlsx")), text =>
            text.Contains("yeast", StringComparison.OrdinalIgnoreCase)
        );
    }

    /// <summary>
    /// What is A and what is B is said, and is a bread of the class; every seat has its plates, water and a place in the balanced orders.
    /// </summary>
    [Theory]
    [MemberData(nameof(Packs))]
    public void The_key_names_both_products_and_every_seat_is_laid(string name)
    {
        var pack = Of(name);
        var key = pack[Key].QuerySelector("main")!.Words();
        var students = int.Parse(
            System.Text.RegularExpressions.Regex.Match(pack["index.html"].Body!.Words(), @"Students ?(\d+)").Groups[1].Value,
            System.Globalization.CultureInfo.InvariantCulture
        );
        Assert.Matches("A is [a-z ]+ of teams? [0-9, and]+[.] B is [a-z ]+ of teams? [0-9, and]+[.]", key);
        var rows = pack[Key].QuerySelectorAll("table.serving tbody tr").ToList();
        Assert.Equal(students, rows.Count);
        var first = rows.CountBy(row => row.Children[1].Words().Split(' ')[0]).Select(count => count.Value).ToList();
        Assert.Equal(3, first.Count);
        Assert.InRange(first.Max() - first.Min(), 0, 2);

        var laid = pack["stations.html"].RowsBelow("tasting").ToDictionary(row => row.Children[0].Words(), row => row.Children[2].Words());
        foreach (var what in new[] { "Plate for the breads", "Plate for the triangle", "Cup of water", "Cup to spit into" })
            Assert.Equal($"{students}", laid[what]);
    }

    private static BuiltPack Of(string name) => name == "demo" ? BuiltPack.Demo : BuiltPack.Mountain;
}
