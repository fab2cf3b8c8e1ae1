using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Recipes;

/// <summary>
/// A card's recipe as a processor of linked data understands it that is not ours, held against the card as people read it.
/// </summary>
public sealed class ForeignReaderTests
{
    private const string Type = "http://www.w3.org/1999/02/22-rdf-syntax-ns#type";

    /// <summary>
    /// schema.org/Recipe, schema.org/HowToStep, schema.org/Organization; spelt as in the context of release 15 or, for half of them, from
    /// memory.
    /// </summary>
    private static readonly string[] Properties =
    [
        "author",
        "cookTime",
        "description",
        "keywords",
        "name",
        "position",
        "prepTime",
        "recipeCategory",
        "recipeIngredient",
        "recipeInstructions",
        "recipeYield",
        "text",
        "tool",
        "totalTime",
    ];

    [Fact]
    public void It_finds_on_every_card_what_people_read_there_and_the_steps_in_their_order()
    {
        var cards = new[] { BuiltPack.Demo, BuiltPack.Mountain }
            .SelectMany(pack => pack["formula-cards.html"].QuerySelectorAll(".card"))
            .ToList();
        var read = RecipeStatements.Read(cards.Select(card => card.QuerySelector("script[type='application/ld+json']")!.TextContent));

        Assert.Equal(6, read.Count);
        foreach (var (card, recipe) in cards.Zip(read))
        {
            var tables = card.QuerySelectorAll("table.compact");
            Assert.Equal([card.QuerySelector("h2")!.Words()], recipe.Of(recipe.Recipe, "name"));
            Assert.Equal(
                tables.Sum(table => table.QuerySelectorAll("tbody tr").Length),
                recipe.Of(recipe.Recipe, "recipeIngredient").Count()
            );
            Assert.Equal(
                card.QuerySelectorAll("ol.method .step-head strong").Select(name => name.Words()),
                recipe
                    .Of(recipe.Recipe, "recipeInstructions")
                    .OrderBy(step => int.Parse(recipe.Of(step, "position").Single(), System.Globalization.CultureInfo.InvariantCulture))
                    .Select(step => recipe.Of(step, "name").Single())
            );
            Assert.Single(recipe.Of(recipe.Recipe, "totalTime"));
            Assert.NotEmpty(recipe.Of(recipe.Recipe, "tool"));
            Assert.Equal(
                Properties.Select(name => RecipeStatements.Vocabulary + name).Order(),
                recipe.Properties.Where(name => name != Type).Order()
            );
        }
    }
}
