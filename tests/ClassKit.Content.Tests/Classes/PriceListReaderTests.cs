using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Classes;

namespace ClassKit.Content.Tests.Classes;

public sealed class PriceListReaderTests : IDisposable
{
    private readonly ContentFolder _folder = new();
    private readonly string _shipped = File.ReadAllText(Path.Combine(Repository.Demo, "prices.md")).ReplaceLineEndings("\n");

    public void Dispose() => _folder.Dispose();

    private Reading<PriceList> Read(string text) => PriceListReader.Read(_folder.Write("prices.md", text));

    [Fact]
    public void Packs_are_read_by_mass_by_volume_and_by_count()
    {
        var list = Read(_shipped).Model!;

        Assert.Equal("USD", list.Currency);
        Assert.Equal(
            ("bag of 5 kg", 5000.0, 5.90m),
            (list.Packs["ap_flour"].Name, list.Packs["ap_flour"].Mass.Grams, list.Packs["ap_flour"].Price.Amount)
        );
        // USDA SR28: a cup of whole milk is 244 g, a large egg without shell 50 g; NIST SP 811: a cup is 236.588 mL
        Assert.Equal(2000 / 236.588 * 244, list.Packs["whole_milk"].Mass.Grams, 0.01);
        Assert.Equal(1500, list.Packs["whole_egg"].Mass.Grams, 1e-9);
        Assert.Equal(0, list.Packs["water"].Price.Amount);
    }

    /// <summary>
    /// NIST Handbook 44, appendix C: a gallon is 231 cubic inches, 3.785 411 784 L, 4 quarts, 8 pints, 16 cups, 128 fluid ounces; a pound
    /// is 453.592 37 g. USDA SR28: a cup of whole milk is 244 g, a large egg 50 g.
    /// </summary>
    [Theory]
    [InlineData("Whole milk", "150 ml", 150 / 236.588 * 244)]
    [InlineData("Whole milk", "15 cl", 150 / 236.588 * 244)]
    [InlineData("Whole milk", "0,15 l", 150 / 236.588 * 244)]
    [InlineData("Whole milk", "2 litres", 2000 / 236.588 * 244)]
    [InlineData("Whole milk", "1 gal", 16 * 244)]
    [InlineData("Whole milk", "2 qt", 8 * 244)]
    [InlineData("Whole milk", "1 pint", 2 * 244)]
    [InlineData("Whole milk", "64 fl oz", 8 * 244)]
    [InlineData("Bread flour", "50 lbs", 50 * 453.59237)]
    [InlineData("Bread flour", "50#", 50 * 453.59237)]
    [InlineData("Whole egg", "2 dozen", 24 * 50)]
    [InlineData("Whole egg", "1 dozen large eggs", 12 * 50)]
    public void What_a_pack_holds_is_read_as_bills_write_it(string ingredient, string holds, double grams)
    {
        var list = Read(
            $"---\ncurrency: USD\n---\n\n# Prices\n\n## Prices\n\n| Ingredient | Pack | Holds | Price |\n|---|---|---|---|\n| {ingredient} | pack | {holds} | 3.00 |\n"
        );

        Assert.True(list.Succeeded, string.Join('\n', list.Problems));
        Assert.Equal(grams, list.Model!.Packs.Values.Single().Mass.Grams, grams / 10_000);
    }

    [Fact]
    public void A_volume_of_what_no_measure_is_known_of_asks_for_the_mass() =>
        Complaint.Only(
            Read(
                "---\ncurrency: USD\n---\n\n# Prices\n\n## Prices\n\n| Ingredient | Pack | Holds | Price |\n|---|---|---|---|\n| Lupin flour | bag | 1 L | 3.00 |\n"
            ),
            11,
            "what a measure of it weighs is not known",
            "Write the mass that the label names"
        );

    [Theory]
    [InlineData("currency: USD", "curency: USD", "", "`curency` is not a key", "Did you mean `currency`?")]
    [InlineData("| Bread flour | bag", "| Bred flour | bag", "", "`Bred flour` is not an ingredient", "Did you mean `Bread flour`?")]
    [InlineData(
        "| bag | 5 kg | 6.80 |",
        "| bag | 5 kg | 6,800 |",
        "",
        "The price is `6,800`, which may be 6.800 or 6800",
        "Write two decimals, or no comma."
    )]
    [InlineData(
        "| bag | 5 kg | 6.80 |",
        "| bag | 5 kg | 6.80 EUR |",
        "",
        "The price is `6.80 EUR`, and the list is in USD",
        "A list has one currency"
    )]
    [InlineData(
        "| bag | 5 kg | 6.80 |",
        "| bag | 5 kg | 6.80 € |",
        "",
        "The price is `6.80 €`, and the list is in USD",
        "A list has one currency"
    )]
    [InlineData("| bag | 5 kg | 6.80 |", "| bag | 5 kg | dear |", "", "The price is `dear`, which is not a number", "Write digits")]
    [InlineData("| bag | 5 kg | 6.80 |", "| bag | 5 kg | -1 |", "", "The price is -1", "It must be from 0")]
    [InlineData("| bag | 5 kg | 6.80 |", "| bag | 5 | 6.80 |", "", "What a pack of Bread flour holds is `5`, without a unit", "`5 kg`")]
    [InlineData("| bag | 5 kg | 6.80 |", "| bag |  | 6.80 |", "", "The cell in the column `Holds` is empty", "Fill it in")]
    [InlineData("| bag | 5 kg | 6.80 |", "| bag | 5 doz | 6.80 |", "", "A pack of Bread flour holds `5 doz`", "Did you mean `oz`?")]
    [InlineData("| 30 large eggs |", "| 30 large egs |", "", "A pack of Whole egg holds `30 large egs`", "Did you mean `large eggs`?")]
    [InlineData("| carton | 1 L |", "| carton | 0 L |", "", "What a pack holds is 0 L", "above 0")]
    [InlineData("| Bread flour | bag", "| All-purpose flour | bag", "", "`All-purpose flour` is listed a second time", "Keep the pack")]
    [InlineData(
        "| Ingredient | Pack | Holds | Price |",
        "| Ingredient | Pack | Holds | Prize |",
        "",
        "The table has no column `Price`",
        "Its columns are",
        2
    )]
    [InlineData("## Prices", "## Price", "## Price", "`## Price` is not a section", "Did you mean `Prices`?")]
    public void A_mistake_is_shown_with_its_line_and_the_way_out(
        string find,
        string replacement,
        string at,
        string found,
        string remedy,
        int problems = 1
    )
    {
        var broken = Complaint.Break(_shipped, find, replacement);
        var reading = Read(broken);
        // A column that is missing leaves every row without it, which is not said a second time.
        if (problems > 1)
            Assert.True(reading.Problems.Count >= problems);
        Complaint.One(
            reading.Problems.First(problem => problem.Found.Contains(found, StringComparison.Ordinal)),
            Complaint.LineFor(at, _shipped, find, broken),
            found,
            remedy
        );
    }

    /// <summary>Common practice, no source: how tills and wholesalers of several countries print one price.</summary>
    [Theory]
    [InlineData("6,80", 6.80)]
    [InlineData("$6.80", 6.80)]
    [InlineData("6.80 $", 6.80)]
    [InlineData("USD 6,80", 6.80)]
    [InlineData("1,250.00 USD", 1250)]
    [InlineData("1.250,00", 1250)]
    [InlineData("1 250,00", 1250)]
    [InlineData("1'250.00", 1250)]
    [InlineData("0,5", 0.5)]
    [InlineData("0,125", 0.125)]
    public void A_price_is_read_as_it_is_written(string written, double price) =>
        Assert.Equal(
            (decimal)price,
            Read(Complaint.Break(_shipped, "| bag | 5 kg | 6.80 |", $"| bag | 2,5 kg | {written} |"))
                .Model!.Packs["bread_flour"]
                .Price.Amount
        );

    /// <summary>
    /// Words: USDA SR28, NDB 01123, household weights. Letters: Regulation (EC) 589/2008, Article 4: M is 53 g to 63 g in the shell, of
    /// which some tenth to eighth is shell.
    /// </summary>
    [Theory]
    [InlineData("10 medium eggs", 440, 440)]
    [InlineData("30 extra large eggs", 1680, 1680)]
    [InlineData("12 eggs", 600, 600)]
    [InlineData("10 eggs size M", 530 * 0.875, 630 * 0.9)]
    [InlineData("30 L eggs", 1890 * 0.875, 2190 * 0.9)]
    public void Eggs_are_counted_by_size(string holds, double least, double most) =>
        Assert.InRange(
            Read(Complaint.Break(_shipped, "| 30 large eggs |", $"| {holds} |")).Model!.Packs["whole_egg"].Mass.Grams,
            least,
            most
        );

    [Fact]
    public void A_class_profile_carries_its_price_list()
    {
        var folder = _folder.Copy(Repository.Demo, "class");
        Assert.Equal("USD", ClassProfileReader.Read(Path.Combine(folder, "class.md")).Model!.Prices!.Currency);

        File.WriteAllText(
            Path.Combine(folder, "prices.md"),
            _shipped.Replace("| Bread flour |", "| Bred flour |", StringComparison.Ordinal)
        );
        var problem = Assert.Single(ClassProfileReader.Read(Path.Combine(folder, "class.md")).Problems);
        Assert.EndsWith("class/prices.md", problem.File, StringComparison.Ordinal);

        File.Delete(Path.Combine(folder, "prices.md"));
        var line = Array.IndexOf(File.ReadAllLines(Path.Combine(folder, "class.md")), "prices: prices.md") + 1;
        Complaint.Only(ClassProfileReader.Read(Path.Combine(folder, "class.md")), line, "There is no file", "Check the spelling");
    }
}
