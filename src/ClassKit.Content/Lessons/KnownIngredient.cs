using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Lessons;

/// <summary>Finds an ingredient by its id or its name.</summary>
internal static class KnownIngredient
{
    /// <summary>The ingredient, or null with the nearest one offered.</summary>
    public static Ingredient? Find(Located name, ProblemList problems)
    {
        if (IngredientCatalog.TryFind(name.Text, out var byId))
            return byId;
        if (IngredientCatalog.All.FirstOrDefault(ingredient => ingredient.Name.Equals(name.Text, StringComparison.OrdinalIgnoreCase)) is { } byName)
            return byName;
        problems.Add(name.Line, $"`{name.Text}` is not an ingredient that is known here", NearestWord.Advice(name.Text, [.. IngredientCatalog.All.Select(ingredient => ingredient.Name)]));
        return null;
    }
}
