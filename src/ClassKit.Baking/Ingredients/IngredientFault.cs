namespace ClassKit.Baking.Ingredients;

/// <summary>What is wrong with a row of a file of ingredients.</summary>
/// <param name="Column">In which column.</param>
/// <param name="Found">What stands there; empty where something is missing.</param>
/// <param name="Kind">What is wrong with it.</param>
public sealed record IngredientFault(string Column, string Found, IngredientFaultKind Kind);
