using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Formulas;

/// <summary>One ingredient of a batch.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="Percent">Its baker's percentage.</param>
/// <param name="Exact">The computed mass.</param>
/// <param name="Weighed">The mass to weigh: a multiple of <paramref name="Resolution"/>.</param>
/// <param name="Resolution">What the scale that this ingredient is weighed on can show.</param>
public sealed record BatchLine(Ingredient Ingredient, double Percent, Mass Exact, Mass Weighed, Mass Resolution)
{
    /// <summary>True if the scale shows nothing for what should be there: weigh a larger batch, or use a finer scale.</summary>
    public bool IsBelowScale => Exact.Grams > 0 && Weighed.Grams <= 0;
}
