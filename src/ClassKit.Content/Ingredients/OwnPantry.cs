using ClassKit.Baking.Ingredients;

namespace ClassKit.Content.Ingredients;

/// <summary>What a file of ingredients holds.</summary>
/// <param name="Own">Its ingredients, in the order of the file; ids are unique.</param>
public sealed record OwnPantry(IReadOnlyList<Ingredient> Own);
