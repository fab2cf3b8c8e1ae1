using ClassKit.Baking.Explanations;
using ClassKit.Baking.Ingredients;

namespace ClassKit.BenchSums.Inputs;

/// <summary>Finds an ingredient by what people call it.</summary>
internal static class Ingredients
{
    public static Notation<Ingredient> Notation { get; } = new("an ingredient, as bread flour", Find);

    /// <summary>The ingredient of that id or name; else the only one whose name begins with it or holds it as words.</summary>
    public static Computed<Ingredient> Find(string text)
    {
        var asked = Plain(text);
        if (asked.Length == 0)
            return new Impossibility("no-ingredient", "No ingredient was named.", "Name one, as bread flour.");
        return
            (
                Only(name => name == asked)
                ?? OnlyCalled(asked)
                ?? Only(name => name.StartsWith(asked, StringComparison.Ordinal))
                ?? Only(name => Holds(name, asked))
            )
                is { } found
            ? found
            : Unclear(text, asked);
    }

    /// <summary>Null if none fits, or more than one.</summary>
    private static Ingredient? Only(Func<string, bool> fits)
    {
        var fitting = Fitting(fits);
        return fitting.Count == 1 ? fitting[0] : null;
    }

    /// <summary>The one that has it as another name.</summary>
    private static Ingredient? OnlyCalled(string asked) => Pantry.Shipped.Called(asked) is [var only] ? only : null;

    private static Impossibility Unclear(string text, string asked) =>
        Fitting(name => Holds(name, asked)) is { Count: > 1 } several
            ? new("several-ingredients", $"`{text.Trim()}` may be {Names(several)}.", "Say which.")
            : new(
                "unknown-ingredient",
                $"`{text.Trim()}` is not an ingredient that is known here.",
                "Name it as flour, milk, butter or the like, or as the file of ingredients does."
            );

    private static List<Ingredient> Fitting(Func<string, bool> fits) =>
        [.. IngredientCatalog.All.Where(ingredient => fits(Plain(ingredient.Name)) || fits(Plain(ingredient.Id)))];

    private static bool Holds(string name, string words) => $" {name} ".Contains($" {words} ", StringComparison.Ordinal);

    /// <summary>Without what stands behind a comma or in brackets: “Brown sugar, packed” is brown sugar.</summary>
    private static string Plain(string name) => name.Split(',', '(')[0].Replace('_', ' ').Trim().ToLowerInvariant();

    private static string Names(IEnumerable<Ingredient> ingredients) =>
        string.Join(", ", ingredients.Select(ingredient => ingredient.Name));
}
