using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Formulas;

/// <summary>One ingredient of a baker's formula.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="Percent">Per 100 of all flour together, by mass: 65 is 65 %. Above 0.</param>
public sealed record FormulaLine(Ingredient Ingredient, double Percent);
