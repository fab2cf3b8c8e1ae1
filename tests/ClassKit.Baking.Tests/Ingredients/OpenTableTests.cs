using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Tests.Ingredients;

/// <summary>
/// Every number of the file of ingredients that cites a row of the open table, against that row: USDA National Nutrient Database for
/// Standard Reference, release 28 (2015, revised 2016). The rows that are cited stand beside this file as they are published.
/// </summary>
public sealed partial class OpenTableTests
{
    private static readonly Dictionary<string, string[]> Foods = Rows("usda-sr28.csv").ToDictionary(row => row[0]);

    private static readonly ILookup<string, string[]> Measures = Rows("usda-sr28-measures.csv").ToLookup(row => row[0]);

    public static TheoryData<string> Cited =>
        [.. IngredientCatalog.All.Where(ingredient => Number(ingredient) is not null).Select(ingredient => ingredient.Id)];

    [Fact]
    public void Most_of_the_file_cites_the_table_and_the_rest_says_where_it_is_from()
    {
        Assert.InRange(IngredientCatalog.All.Count, 250, 400);
        Assert.InRange(Cited.Count, 250, 400);
        Assert.All(IngredientCatalog.All.Where(ingredient => Number(ingredient) is null), ingredient =>
            Assert.Matches("from memory|molar masses|AACC|USDA SR28", ingredient.Source)
        );
    }

    [Theory]
    [MemberData(nameof(Cited))]
    public void Composition_is_that_of_the_row(string id)
    {
        var ingredient = IngredientCatalog.Get(id);
        var row = Foods[Number(ingredient)!];

        Assert.Equal(Field(row, "water_g")!.Value, ingredient.WaterShare * 100, 1e-9);
        Assert.Equal(Field(row, "protein_g")!.Value, ingredient.Solids!.Value.Protein, 1e-9);
        Assert.Equal(Field(row, "fat_g")!.Value, ingredient.Solids.Value.Fat, 1e-9);
        Assert.Equal(Field(row, "carbohydrate_by_difference_g")!.Value, ingredient.Solids.Value.Carbohydrate, 1e-9);
        // Of soda the table has the residue after burning: all that is not water is salt.
        if (id != "baking_soda")
            Assert.Equal(Field(row, "ash_g")!.Value, ingredient.Solids.Value.Ash, 1e-9);
        Assert.Equal(Field(row, "sugars_g") / 100, ingredient.SugarShare);
    }

    /// <summary>
    /// A teaspoon that the table has none of is a third of its tablespoon, a 48th of its cup or a sixth of its fluid ounce; or, of yeast,
    /// what packets say.
    /// </summary>
    [Theory]
    [MemberData(nameof(Cited))]
    public void Household_weights_are_those_of_the_row(string id)
    {
        var ingredient = IngredientCatalog.Get(id);
        var measures = Measures[Number(ingredient)!].Select(row => (Name: row[2], Grams: Parse(row[3]) / Parse(row[1]))).ToList();

        if (ingredient.GramsPerCup is { } cup)
            Assert.Contains(measures, measure =>
                measure.Name.StartsWith("cup", StringComparison.Ordinal) && Math.Abs(measure.Grams - cup) < 0.01
            );
        if (ingredient.GramsPerTeaspoon is not { } teaspoon || ingredient.Source.Contains("packets", StringComparison.Ordinal))
            return;
        Assert.Contains(measures, measure => Teaspoons(measure.Name) is { } many && Math.Abs(measure.Grams / many - teaspoon) < 0.01);
    }

    /// <summary>
    /// A dipped cup of flour and a sifted one differ by a fifth, a packed one of sugar by half: whoever measures by the cup must be told
    /// which is meant.
    /// </summary>
    [Theory]
    [MemberData(nameof(Cited))]
    public void How_a_cup_is_filled_is_told_as_the_row_tells_it(string id)
    {
        var ingredient = IngredientCatalog.Get(id);
        if (ingredient.GramsPerCup is not { } cup)
            return;
        // Of NDB 20083 the table says "cup" alone; NDB 20129, the same flour unenriched, has the same weight "unsifted, dipped".
        var number = id == "bread_flour" ? "20129" : Number(ingredient)!;
        var told = Measures[number]
            .Where(row => row[2].StartsWith("cup", StringComparison.Ordinal) && Math.Abs(Parse(row[3]) / Parse(row[1]) - cup) < 0.01)
            .Select(row => Filling(row[2]))
            .Distinct()
            .ToList();

        if (told is [var only])
            Assert.Equal(only, ingredient.CupFilling);
    }

    [Fact]
    public void Baking_powders_hold_the_sodium_of_the_table() =>
        Assert.All(
            IngredientCatalog.All.Where(ingredient => ingredient.SodiumShare is not null && Number(ingredient) is not null),
            ingredient => Assert.Equal(Field(Foods[Number(ingredient)!], "sodium_mg")!.Value / 100_000, ingredient.SodiumShare!.Value, 1e-5)
        );

    private static string? Filling(string measure) =>
        Fillings
            .Select(word => (word.As, At: measure.IndexOf(word.Published, StringComparison.Ordinal)))
            .FirstOrDefault(word => word.At >= 0)
            .As;

    /// <summary>The table's words in the order in which they are looked for, and the file's.</summary>
    private static readonly (string Published, string As)[] Fillings =
    [
        ("not packed", "loose"),
        ("unpacked", "loose"),
        ("packed", "packed"),
        ("dipped", "dipped"),
        ("unsifted", "unsifted"),
        ("sifted", "sifted"),
        ("chopped", "chopped"),
        ("shredded", "shredded"),
        ("grated", "grated"),
        ("mashed", "mashed"),
    ];

    private static double? Teaspoons(string measure) =>
        measure.StartsWith("tsp", StringComparison.Ordinal) || measure.StartsWith("teaspoon", StringComparison.Ordinal) ? 1
        : measure.StartsWith("tbsp", StringComparison.Ordinal) || measure.StartsWith("tablespoon", StringComparison.Ordinal) ? 3
        : measure.StartsWith("fl oz", StringComparison.Ordinal) ? 6
        : measure.StartsWith("cup", StringComparison.Ordinal) ? 48
        : null;

    private static string? Number(Ingredient ingredient) =>
        Ndb().Match(ingredient.Source) is { Success: true } match && !ingredient.Source.StartsWith("AACC", StringComparison.Ordinal)
            ? match.Groups[1].Value
            : null;

    private static double? Field(string[] row, string column) =>
        row[Array.IndexOf(Columns, column)] is { Length: > 0 } text ? Parse(text) : null;

    private static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static readonly string[] Columns = File.ReadLines(PathOf("usda-sr28.csv")).First().Split(',');

    private static IEnumerable<string[]> Rows(string file) =>
        File.ReadLines(PathOf(file)).Skip(1).Where(line => line.Length > 0).Select(Fields);

    private static string[] Fields(string line) =>
        [
            .. FieldOf()
                .Matches(line)
                .Select(match =>
                    match.Groups["quoted"].Success
                        ? match.Groups["quoted"].Value.Replace("\"\"", "\"", StringComparison.Ordinal)
                        : match.Groups["plain"].Value
                ),
        ];

    private static string PathOf(string file) => Path.Combine(Repository.Root, "tests", "ClassKit.Baking.Tests", "Ingredients", file);

    [GeneratedRegex(@"NDB (\d{5})")]
    private static partial Regex Ndb();

    [GeneratedRegex("(?:^|,)(?:\"(?<quoted>(?:[^\"]|\"\")*)\"|(?<plain>[^,]*))")]
    private static partial Regex FieldOf();
}
