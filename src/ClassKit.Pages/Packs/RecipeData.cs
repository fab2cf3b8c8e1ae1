using System.Globalization;
using System.Text.Json.Nodes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Numbers;
using ClassKit.Pages.Prose;

namespace ClassKit.Pages.Packs;

/// <summary>A formula card as data that other programs read: schema.org's <c>Recipe</c> in JSON-LD.</summary>
/// <remarks>
/// schema.org/Recipe, schema.org/HowToStep; durations as in ISO 8601. Nothing in it is executed. Put together as JSON and not from
/// dictionaries, whose shape would be found out by reflection: that takes longer than the page around it.
/// </remarks>
internal static class RecipeData
{
    /// <summary>
    /// The JSON text. Its encoder writes no <c>&lt;</c>, <c>&gt;</c> or <c>&amp;</c>, so that it can stand within a page.
    /// </summary>
    public static string Of(FormulaCard card, LessonPack pack)
    {
        var (formula, profile) = (card.Bread, pack.Class);
        return new JsonObject
        {
            ["@context"] = "https://schema.org",
            ["@type"] = "Recipe",
            ["name"] = formula.Formula.Title,
            ["description"] = MarkdownHtml.PlainText(pack.Words(formula.Why)),
            ["author"] = new JsonObject { ["@type"] = "Organization", ["name"] = profile.Kitchen },
            ["recipeCategory"] = "Bread",
            ["keywords"] = "leavened by " + LeaveningText.Of(formula.Formula),
            ["recipeYield"] = $"{card.Pieces} {(card.Pieces == 1 ? formula.Piece : formula.Pieces)}",
            ["prepTime"] = Duration(formula.Steps.Where(step => !step.IsCooking)),
            ["cookTime"] = Duration(formula.Steps.Where(step => step.IsCooking)),
            ["totalTime"] = Duration(formula.Steps),
            ["recipeIngredient"] = ListOf(
                card.Lines.Select(line =>
                        $"{KitchenText.Weighed(line.Line.Weighed, line.Line.Resolution, profile.Units)} {line.Line.Ingredient.Name}"
                    )
                    .Concat(
                        card.Surfaces.Select(taken =>
                            $"about {KitchenText.Ordered(taken.Mass, profile)} {taken.Surface.Ingredient.Name}, for {MarkdownHtml.PlainText(pack.Words(taken.Surface.For))}"
                        )
                    )
                    .Select(line => (JsonNode)line.Replace('\u00A0', ' '))
            ),
            ["recipeInstructions"] = ListOf(
                formula.Steps.Select(
                    (step, before) =>
                        new JsonObject
                        {
                            ["@type"] = "HowToStep",
                            // What reads linked data knows no order of what a property holds, unless it is said.
                            ["position"] = before + 1,
                            ["name"] = step.Name,
                            ["text"] = MarkdownHtml.PlainText(pack.Words(step.Text)),
                        }
                )
            ),
            ["tool"] = ListOf(formula.Equipment.Select(tool => (JsonNode)tool.Name)),
        }.ToJsonString();
    }

    private static JsonArray ListOf(IEnumerable<JsonNode> nodes) => [.. nodes];

    /// <summary>The longest that the steps take.</summary>
    private static string Duration(IEnumerable<MethodStep> steps) =>
        string.Create(CultureInfo.InvariantCulture, $"PT{steps.Sum(step => step.MaxMinutes)}M");
}
