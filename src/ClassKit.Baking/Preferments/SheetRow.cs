using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Preferments;

/// <summary>One ingredient over the columns of a formula sheet.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="TotalPercent">Of the total flour.</param>
/// <param name="Total">In the whole dough.</param>
/// <param name="InSubMixes">In each sub-mix, in the sheet's order; 0 g where it is not in it.</param>
/// <param name="Final">What is left to add when the final dough is mixed.</param>
/// <param name="FinalPercent">That, in percent of the final dough's own flour; null if the final dough adds no flour.</param>
public sealed record SheetRow(
    Ingredient Ingredient,
    double TotalPercent,
    Mass Total,
    IReadOnlyList<Mass> InSubMixes,
    Mass Final,
    double? FinalPercent
);
