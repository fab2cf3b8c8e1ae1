using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.NamedFoods;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.NamedFoods;

/// <summary>What a method calls by the end of its name is what the formula lists, unless the short name is another thing.</summary>
public sealed class ShortNamesTests
{
    [Theory]
    [InlineData("jam", "Apricot jam", true)]
    [InlineData("rye flour", "Dark rye flour", true)]
    [InlineData("apricots", "Dried apricots", true)]
    [InlineData("butter", "Peanut butter", false)]
    [InlineData("milk", "Almond milk, unsweetened", true)]
    [InlineData("milk", "Dry skim milk", false)]
    [InlineData("rice", "Rice flour", false)]
    [InlineData("rye", "Dark rye flour", false)]
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

    private static Ingredient Listed(string name) => Assert.Single(Pantry.Shipped.Called(name));
}
