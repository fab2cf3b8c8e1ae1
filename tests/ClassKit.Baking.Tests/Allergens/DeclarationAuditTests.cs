using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Tests.Allergens;

/// <summary>
/// Every ingredient of the catalogue, held by hand against Regulation (EU) 1169/2011, Annex II, and US FD&amp;C Act 201(qq).
/// </summary>
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
        // Annex II 6 (a) and 201(qq)(2)(A): fully refined soybean oil, and highly refined oils, are exempt; which oil it is and how far
        // refined only the label tells
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

    /// <summary>What is declared of all others, by allergen; of those that stand in no row, nothing is.</summary>
    private static readonly Dictionary<string, string> OthersByHand = new()
    {
        ["wheat"] =
            "durum_flour whole_wheat_pastry_flour pastry_flour high_gluten_flour bread_flour_unenriched ap_flour_unbleached triticale_flour durum_berries wheat_bran wheat_germ wheat_gluten wheat_starch malted_milk_powder",
        ["spelt"] = "spelt_flour spelt_berries",
        ["rye"] = "rye_flour_dark rye_flour_light rye_berries triticale_flour",
        ["barley"] = "barley_flour malt_flour pearl_barley malt_syrup malted_milk_powder beer",
        ["oats"] = "oat_flour oat_bran oat_milk",
        ["soya"] = "soy_flour soy_flour_defatted soybean_oil soy_milk soy_milk_unsweetened soy_lecithin hazelnut_spread",
        ["peanut"] = "peanut_flour peanut_oil peanuts peanut_butter",
        ["lupin"] = "lupin_flour",
        ["milk"] =
            "half_and_half light_cream light_whipping_cream heavy_cream sour_cream evaporated_milk condensed_milk dry_whole_milk dry_skim_milk dry_buttermilk whey acid_whey dry_whey goat_milk sheep_milk buttermilk_whole greek_yogurt_whole cream_cheese ricotta cottage_cheese cheddar parmesan mozzarella feta clarified_butter whipped_butter malted_milk_powder milk_chocolate white_chocolate hazelnut_spread",
        ["egg"] = "duck_egg quail_egg goose_egg dried_egg dried_egg_white dried_egg_yolk sugared_egg_yolk",
        ["sesame"] = "sesame_oil sesame_hulled tahini",
        ["walnut"] = "walnut_oil black_walnuts",
        ["hazelnut"] = "hazelnut_oil hazelnuts hazelnuts_blanched hazelnut_spread hazelnut_milk",
        ["almond"] = "almond_oil almond_milk almonds_blanched ground_almonds almond_paste almond_butter",
        ["pecan"] = "pecans",
        ["cashew"] = "cashews",
        ["Brazil nut"] = "brazil_nuts",
        ["macadamia nut"] = "macadamias",
        ["pistachio"] = "pistachios",
        ["pine nut"] = "pine_nuts",
        ["mustard"] = "mustard_powder",
        ["celery"] = "celery_seed",
        // Fruit dried pale and wine are kept with sulphites, and hold more than 10 mg/kg as a rule (from memory)
        ["sulphites"] = "red_wine golden_raisins dried_apricots dried_apples dried_peaches dried_pears dried_mango candied_fruit",
    };

    /// <summary>What is made of several things or differs by maker: somebody must have thought of it.</summary>
    private static readonly string[] Compound =
    [
        "ap_flour",
        "bread_flour",
        "whole_wheat_flour",
        "cake_flour",
        "self_rising_flour",
        "buttermilk",
        "plain_yogurt",
        "low_fat_yogurt",
        "skim_yogurt",
        "greek_yogurt",
        "vegetable_oil",
        "olive_oil",
        "shortening",
        "powdered_sugar",
        "baking_powder",
        "instant_yeast",
        "active_dry_yeast",
        "fresh_yeast",
        "almonds",
        "walnuts",
    ];

    [Fact]
    public void All_others_declare_what_the_law_says() =>
        Assert.All(IngredientCatalog.All.Where(ingredient => !ByHand.ContainsKey(ingredient.Id)), ingredient =>
            Assert.Equal(
                OthersByHand
                    .Where(row => row.Value.Split(' ').Contains(ingredient.Id))
                    .Select(row => row.Key)
                    .Order(StringComparer.Ordinal),
                ingredient.Allergens.Select(allergen => allergen.Name).Order(StringComparer.Ordinal)
            )
        );

    [Fact]
    public void Nothing_was_audited_that_is_not_in_the_catalogue() =>
        Assert.Empty(
            OthersByHand
                .Values.SelectMany(row => row.Split(' '))
                .Concat(ByHand.Keys)
                .Except(IngredientCatalog.All.Select(ingredient => ingredient.Id))
        );

    [Fact]
    public void Every_ingredient_declares_what_the_law_says_and_names_what_is_not_known()
    {
        foreach (var ingredient in ByHand.Keys.Select(IngredientCatalog.Get))
        {
            var (declared, perhaps) = ByHand[ingredient.Id];
            Assert.Equal(declared, string.Join(' ', ingredient.Allergens.Select(allergen => allergen.Name)));
            var doubts = ingredient.Doubts.SelectMany(doubt => doubt.Maybe).Distinct().ToList();
            var nuts = AllergenCatalog.Of(AllergenGroup.Nuts);
            Assert.Equal(
                perhaps,
                string.Join(
                    ' ',
                    nuts.All(doubts.Contains)
                        ? ["nuts", .. doubts.Except(nuts).Select(allergen => allergen.Name)]
                        : doubts.Select(allergen => allergen.Name)
                )
            );
        }
    }

    [Fact]
    public void What_differs_by_maker_is_a_state_of_its_own_with_reason_and_source()
    {
        Assert.All(Compound, id => Assert.NotEmpty(IngredientCatalog.Get(id).Doubts));
        Assert.All(IngredientCatalog.All.SelectMany(ingredient => ingredient.Doubts), doubt =>
            Assert.True(doubt.Why.Length > 5 && doubt.Source.Length > 5)
        );
    }

    [Fact]
    public void Refined_oil_tells_of_both_exemptions()
    {
        var doubt = IngredientCatalog.Get("vegetable_oil").Doubts.Single();
        Assert.Contains("1169/2011, Annex II, 6 (a)", doubt.Source, StringComparison.Ordinal);
        Assert.Contains("201(qq)(2)(A)", doubt.Source, StringComparison.Ordinal);
    }
}
