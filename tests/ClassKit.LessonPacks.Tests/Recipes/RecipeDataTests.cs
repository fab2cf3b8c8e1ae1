using System.Text.Json;
using System.Xml;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Recipes;

/// <summary>What other programs read of a card: schema.org/Recipe, whose properties and their kinds these are.</summary>
public sealed class RecipeDataTests
{
    private static readonly List<(string Card, JsonElement Recipe)> Recipes =
    [
        .. new[] { BuiltPack.Demo, BuiltPack.Mountain }
            .SelectMany(pack => pack["formula-cards.html"].QuerySelectorAll(".card"))
            .Select(card =>
                (card.Words(), JsonDocument.Parse(card.QuerySelector("script[type='application/ld+json']")!.TextContent).RootElement)
            ),
    ];

    [Fact]
    public void Every_card_carries_a_recipe_with_what_schema_org_asks_of_one()
    {
        Assert.Equal(6, Recipes.Count);
        foreach (var (_, recipe) in Recipes)
        {
            Assert.Equal(
                ("https://schema.org", "Recipe"),
                (recipe.GetProperty("@context").GetString(), recipe.GetProperty("@type").GetString())
            );
            Assert.NotEmpty(recipe.GetProperty("name").GetString()!);
            Assert.NotEmpty(recipe.GetProperty("recipeIngredient").EnumerateArray());
            Assert.All(recipe.GetProperty("recipeInstructions").EnumerateArray(), step =>
                Assert.Equal("HowToStep", step.GetProperty("@type").GetString())
            );
        }
    }

    [Fact]
    public void Its_ingredients_and_steps_are_those_of_the_card()
    {
        foreach (var (card, recipe) in Recipes)
        {
            Assert.All(recipe.GetProperty("recipeIngredient").EnumerateArray(), line =>
            {
                var words = line.GetString()!.Split(' ', 3);
                Assert.Contains(words[2], card, StringComparison.Ordinal);
                Assert.Contains($"{words[0]} {words[1]}", card, StringComparison.Ordinal);
            });
            Assert.All(recipe.GetProperty("recipeInstructions").EnumerateArray(), step =>
                Assert.Contains(step.GetProperty("name").GetString()!, card, StringComparison.Ordinal)
            );
        }
    }

    [Fact]
    public void Times_are_iso_8601_and_add_up()
    {
        foreach (var (_, recipe) in Recipes)
        {
            var (prepared, cooked, total) = (Minutes(recipe, "prepTime"), Minutes(recipe, "cookTime"), Minutes(recipe, "totalTime"));
            Assert.Equal(total, prepared + cooked);
            Assert.True(cooked > TimeSpan.Zero);
        }

        static TimeSpan Minutes(JsonElement recipe, string property) => XmlConvert.ToTimeSpan(recipe.GetProperty(property).GetString()!);
    }
}
