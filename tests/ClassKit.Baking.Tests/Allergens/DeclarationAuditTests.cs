using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Tests.Allergens;

/// <summary>Every ingredient of the catalogue, held by hand against Regulation (EU) 1169/2011, Annex II, and US FD&amp;C Act 201(qq).</summary>
public sealed class DeclarationAuditTests
{
    /// <summary>What is declared of it, and what a label must be asked for.</summary>
    private static readonly Dictionary<string, (string Declared, string Perhaps)> ByHand = new()
    {
        // Flours of wheat; 21 CFR 137.105, 137.165, 137.200: malted barley flour may be added
        ["ap_flour"] = ("wheat", "barley"),
        ["bread_flour"] = ("wheat", "barley"),
        ["whole_wheat_flour"] = ("wheat", "barley"),
        ["cake_flour"] = ("wheat", "barley"),
        ["self_rising_flour"] = ("wheat", "barley"),
        ["semolina"] = ("wheat", ""),
        ["rye_flour"] = ("rye", "wheat"),
        ["rice_flour"] = ("", "wheat"),
        ["cornmeal"] = ("", "wheat"),
        ["oats"] = ("oats", "wheat"),
        ["water"] = ("", ""),
        ["whole_milk"] = ("milk", ""),
        ["milk_2_percent"] = ("milk", ""),
        ["milk_1_percent"] = ("milk", ""),
        ["skim_milk"] = ("milk", ""),
        ["buttermilk"] = ("milk", ""),
        ["plain_yogurt"] = ("milk", ""),
        ["low_fat_yogurt"] = ("milk", ""),
        ["skim_yogurt"] = ("milk", ""),
        ["greek_yogurt"] = ("milk", ""),
        ["whole_egg"] = ("egg", ""),
        ["egg_white"] = ("egg", ""),
        ["egg_yolk"] = ("egg", ""),
        ["unsalted_butter"] = ("milk", ""),
        ["salted_butter"] = ("milk", ""),
        // Annex II 6 (a) and 201(qq)(2)(A): fully refined soybean oil, and highly refined oils, are exempt; which oil it is and how far refined only the label tells
        ["vegetable_oil"] = ("", "nuts soya peanut sesame"),
        ["olive_oil"] = ("", ""),
        ["shortening"] = ("", "soya milk"),
        ["lard"] = ("", ""),
        ["sugar"] = ("", ""),
        ["brown_sugar"] = ("", "sulphites"),
        ["powdered_sugar"] = ("", "wheat"),
        ["honey"] = ("", ""),
        ["salt"] = ("", ""),
        ["baking_soda"] = ("", ""),
        ["baking_powder"] = ("", "wheat"),
        ["cream_of_tartar"] = ("", "sulphites"),
        ["instant_yeast"] = ("", ""),
        ["active_dry_yeast"] = ("", ""),
        ["fresh_yeast"] = ("", "wheat barley"),
        ["sesame_seeds"] = ("sesame", ""),
        ["almonds"] = ("almond", "nuts peanut"),
        ["walnuts"] = ("walnut", "nuts peanut"),
    };

    /// <summary>What is made of several things or differs by maker: somebody must have thought of it.</summary>
    private static readonly string[] Compound =
    [
        "ap_flour", "bread_flour", "whole_wheat_flour", "cake_flour", "self_rising_flour", "buttermilk", "plain_yogurt", "low_fat_yogurt", "skim_yogurt", "greek_yogurt",
        "vegetable_oil", "olive_oil", "shortening", "powdered_sugar", "baking_powder", "instant_yeast", "active_dry_yeast", "fresh_yeast", "almonds", "walnuts",
    ];

    [Fact]
    public void Nothing_is_in_the_catalogue_that_was_not_audited() =>
        Assert.Equal(ByHand.Keys.Order(StringComparer.Ordinal), IngredientCatalog.All.Select(ingredient => ingredient.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_ingredient_declares_what_the_law_says_and_names_what_is_not_known()
    {
        foreach (var ingredient in IngredientCatalog.All)
        {
            var (declared, perhaps) = ByHand[ingredient.Id];
            Assert.Equal(declared, string.Join(' ', ingredient.Allergens.Select(allergen => allergen.Name)));
            var doubts = ingredient.Doubts.SelectMany(doubt => doubt.Maybe).Distinct().ToList();
            var nuts = AllergenCatalog.Of(AllergenGroup.Nuts);
            Assert.Equal(perhaps, string.Join(' ', nuts.All(doubts.Contains) ? ["nuts", .. doubts.Except(nuts).Select(allergen => allergen.Name)] : doubts.Select(allergen => allergen.Name)));
        }
    }

    [Fact]
    public void What_differs_by_maker_is_a_state_of_its_own_with_reason_and_source()
    {
        Assert.All(Compound, id => Assert.NotEmpty(IngredientCatalog.Get(id).Doubts));
        Assert.All(IngredientCatalog.All.SelectMany(ingredient => ingredient.Doubts), doubt => Assert.True(doubt.Why.Length > 5 && doubt.Source.Length > 5));
    }

    [Fact]
    public void Refined_oil_tells_of_both_exemptions()
    {
        var doubt = IngredientCatalog.Get("vegetable_oil").Doubts.Single();
        Assert.Contains("1169/2011, Annex II, 6 (a)", doubt.Source, StringComparison.Ordinal);
        Assert.Contains("201(qq)(2)(A)", doubt.Source, StringComparison.Ordinal);
    }
}
