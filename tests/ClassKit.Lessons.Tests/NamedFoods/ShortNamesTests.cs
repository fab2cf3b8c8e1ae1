using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.NamedFoods;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.NamedFoods;

/// <summary>What a method calls by the end of its name is what the formula lists, unless the short name is another thing.</summary>
public sealed class ShortNamesTests
{
    [Theory]
    [InlineData("jam", "apricot_jam", true)]
    [InlineData("rye flour", "dark_rye_flour", true)]
    [InlineData("apricots", "dried_apricots", true)]
    [InlineData("butter", "peanut_butter", false)]
    [InlineData("milk", "almond_milk_unsweetened", false)]
    [InlineData("milk", "dry_skim_milk", false)]
    [InlineData("rice", "rice_flour", false)]
    [InlineData("rye", "dark_rye_flour", false)]
    public void A_short_name_is_a_listed_ingredient(string named, string listed, bool isListed)
    {
        var bread = SampleLesson.Muffins with
        {
            Formula = new("plain", "Plain", Leavening.None, [new(IngredientCatalog.Get("bread_flour"), 100), new(Listed(listed), 10)]),
            Surfaces = [],
        };
        var mentions = FoodMentions.In($"Stir in the {named}.", []);

        Assert.Equal(isListed, mentions.Count > 0 && mentions.All(mention => mention.IsListedIn(bread)));
    }

    private static Ingredient Listed(string id) => Pantry.Shipped.All.Single(ingredient => ingredient.Id == id);
}
