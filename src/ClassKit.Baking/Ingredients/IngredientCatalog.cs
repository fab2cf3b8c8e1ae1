using System.Diagnostics.CodeAnalysis;

namespace ClassKit.Baking.Ingredients;

/// <summary>
/// The ingredients that ClassKit knows, with composition and household weights: those of the file that ships, <c>ingredients.csv</c> beside
/// this, each with its source there.
/// </summary>
/// <remarks>
/// USDA's cups and teaspoons of one ingredient were weighed apart and agree within a twentieth, but for yeast, of which packets say both. A
/// kitchen's or lesson's own are added in a <see cref="Pantry"/>. Allergens: what the food itself is in the words of
/// <see cref="Allergens.AllergenCatalog"/>; what a maker may add or leave in is a doubt. Starch, oil and malt are known to differ by maker.
/// </remarks>
public static class IngredientCatalog
{
    /// <summary>All of them, in the order of the file. Read when they are first asked for.</summary>
    public static IReadOnlyList<Ingredient> All => Pantry.Shipped.All;

    /// <summary>Looks an ingredient up by its id, letter for letter.</summary>
    /// <param name="id">As lessons write it.</param>
    /// <param name="ingredient">The ingredient; null if there is none.</param>
    public static bool TryFind(string id, [MaybeNullWhen(false)] out Ingredient ingredient) => Pantry.Shipped.TryFind(id, out ingredient);

    /// <summary>The ingredient of an id that is known to be here.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that id. For text that a user typed use <see cref="TryFind"/>.</exception>
    public static Ingredient Get(string id) => TryFind(id, out var found) ? found : throw new KeyNotFoundException(id);
}
