using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Household;

/// <summary>
/// Every household weight of the catalogue beside the pair that is published of it: what a measure holds, and grams. USDA National Nutrient
/// Database for Standard Reference, release 28 (2015), WEIGHT, by NDB number; dry yeast as its packets say of themselves.
/// </summary>
public sealed class PublishedMeasuresTests
{
    private const double Cup = 48;
    private const double Tablespoon = 3;
    private const double FluidOunce = 6;
    private const double Teaspoon = 1;

    public static TheoryData<string, double, double, string> Pairs =>
        new()
        {
            { "ap_flour", Cup, 125, "20081" },
            { "bread_flour", Cup, 137, "20083" },
            { "whole_wheat_flour", Cup, 120, "20080" },
            { "cake_flour", Cup, 137, "20084, unsifted, dipped" },
            { "self_rising_flour", Cup, 125, "20082" },
            { "water", Cup, 237, "14555" },
            { "water", FluidOunce, 29.6, "14555" },
            { "whole_milk", Cup, 244, "01077" },
            { "whole_milk", FluidOunce, 30.5, "01077" },
            { "milk_2_percent", Cup, 244, "01079" },
            { "milk_2_percent", FluidOunce, 30.5, "01079" },
            { "milk_1_percent", Cup, 244, "01082" },
            { "milk_1_percent", FluidOunce, 30.5, "01082" },
            { "skim_milk", Cup, 245, "01085" },
            { "skim_milk", FluidOunce, 30.6, "01085" },
            { "buttermilk", Cup, 245, "01088" },
            { "buttermilk", FluidOunce, 30.6, "01088" },
            { "plain_yogurt", Cup, 245, "01116" },
            { "low_fat_yogurt", Cup, 245, "01117" },
            { "skim_yogurt", Cup, 245, "01118" },
            { "unsalted_butter", Cup, 227, "01145" },
            { "unsalted_butter", Tablespoon, 14.2, "01145" },
            { "salted_butter", Cup, 227, "01001" },
            { "salted_butter", Tablespoon, 14.2, "01001" },
            { "vegetable_oil", Cup, 218, "04582" },
            { "vegetable_oil", Teaspoon, 4.5, "04582" },
            { "olive_oil", Cup, 216, "04053" },
            { "olive_oil", Teaspoon, 4.5, "04053" },
            { "sugar", Cup, 200, "19335" },
            { "sugar", Teaspoon, 4.2, "19335" },
            { "brown_sugar", Cup, 220, "19334, packed" },
            { "brown_sugar", Teaspoon, 4.6, "19334, packed" },
            { "honey", Cup, 339, "19296" },
            { "honey", Tablespoon, 21, "19296" },
            { "salt", Cup, 292, "02047" },
            { "salt", Teaspoon, 6.0, "02047" },
            { "baking_soda", Teaspoon, 4.6, "18372" },
            { "baking_powder", Teaspoon, 4.6, "18369" },
            { "cream_of_tartar", Teaspoon, 3.0, "18373" },
            { "instant_yeast", 2.25, 7, "packet" },
            { "active_dry_yeast", 2.25, 7, "packet" },
            { "semolina", Cup, 167, "20066" },
            { "rye_flour", Cup, 102, "20064" },
            { "rice_flour", Cup, 158, "20061" },
            { "cornmeal", Cup, 157, "20022" },
            { "oats", Cup, 156, "20038" },
            { "shortening", Cup, 205, "04031" },
            { "shortening", Tablespoon, 12.8, "04031" },
            { "lard", Cup, 205, "04002" },
            { "lard", Tablespoon, 12.8, "04002" },
            { "powdered_sugar", Cup, 120, "19336, unsifted" },
            { "powdered_sugar", Teaspoon, 2.5, "19336" },
            { "sesame_seeds", Cup, 144, "12023" },
            { "sesame_seeds", Tablespoon, 9, "12023" },
            { "almonds", Cup, 143, "12061" },
            { "walnuts", Cup, 117, "12155, chopped" },
        };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_measure_holds_what_is_published(string id, double teaspoons, double grams, string where)
    {
        var ingredient = IngredientCatalog.Get(id);
        var held = teaspoons == Cup ? ingredient.GramsPerCup : ingredient.GramsPerTeaspoon * teaspoons;
        // A tablespoon or an ounce weighed apart from the cup is off by its own rounding.
        Assert.True(held is { } mass && Math.Abs(mass - grams) <= 0.01 * grams, $"{id}: {held} g, and {grams} g are published ({where})");
    }

    [Fact]
    public void No_household_weight_stands_without_a_published_one()
    {
        // Those of which a row of the open table is cited are held against it in OpenTableTests.
        foreach (var ingredient in IngredientCatalog.All.Where(ingredient => !ingredient.Source.Contains("NDB", StringComparison.Ordinal)))
        {
            var pairs = Pairs.Select(row => row.Data).Where(pair => pair.Item1 == ingredient.Id).ToList();
            Assert.True(
                ingredient.GramsPerCup is null || pairs.Exists(pair => pair.Item2 == Cup),
                $"{ingredient.Id} has a cup, and no pair is named here"
            );
            Assert.True(
                ingredient.GramsPerTeaspoon is null || ingredient.GramsPerCup is not null || pairs.Exists(pair => pair.Item2 < Cup),
                $"{ingredient.Id} has a teaspoon, and no pair is named here"
            );
        }
    }

    /// <summary>
    /// Which densities are held against what, whole and once: those whose row cites the open table against its household weights
    /// (<c>OpenTableTests</c>, composition and measures of each), water against the table's row 14555 and dry yeast against its packets
    /// (above). None is from memory; the rest are weighed only and have no cup on any page.
    /// </summary>
    [Fact]
    public void Every_density_is_held_against_a_published_pair_and_none_is_from_memory()
    {
        var measured = IngredientCatalog
            .All.Where(ingredient => ingredient.GramsPerCup is not null || ingredient.GramsPerTeaspoon is not null)
            .ToList();
        string[] elsewhere =
        [
            .. measured
                .Where(ingredient =>
                    !ingredient.Source.Contains("NDB", StringComparison.Ordinal)
                    || ingredient.Source.Contains("packets", StringComparison.Ordinal)
                )
                .Select(ingredient => ingredient.Id),
        ];

        Assert.Equal(["active_dry_yeast", "instant_yeast", "water"], elsewhere.Order(StringComparer.Ordinal));
        Assert.All(elsewhere, id => Assert.Contains(Pairs.Select(row => row.Data), pair => pair.Item1 == id));
        Assert.All(measured, ingredient => Assert.DoesNotMatch("(cup|teaspoon|density)[^;]*from memory", ingredient.Source));
        Assert.InRange(measured.Count, 240, 315);
        Assert.All(IngredientCatalog.All.Except(measured), ingredient =>
            Assert.True(ingredient.Piece is not null || HouseholdMeasures.OfCups(ingredient, 1) is null, ingredient.Id)
        );
    }

    /// <summary>
    /// One ingredient, one density: its measures agree with each other, and so a cup is 48 teaspoons on every page. USDA's yeast (4.0 g a
    /// teaspoon, 7.2 g a packet of 2 1/4) does not, by a fifth.
    /// </summary>
    [Fact]
    public void Cup_spoon_and_packet_of_one_ingredient_agree()
    {
        foreach (
            var ingredient in IngredientCatalog.All.Where(ingredient =>
                ingredient.GramsPerCup is not null && ingredient.GramsPerTeaspoon is not null
            )
        )
            Assert.InRange(ingredient.GramsPerTeaspoon!.Value * Cup / ingredient.GramsPerCup!.Value, 0.95, 1.05);
        var dry = IngredientCatalog.Get("active_dry_yeast");
        Assert.Equal("2 1/4 tsp", HouseholdMeasures.For(IngredientCatalog.Get("instant_yeast"), Mass.FromGrams(dry.Piece!.Grams))!.Text);
    }
}
