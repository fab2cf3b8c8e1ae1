using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.Baking.Formulas;

/// <summary>A baker's formula scaled to a mass of dough and rounded for the kitchen's scales.</summary>
/// <param name="Formula">The formula scaled.</param>
/// <param name="Lines">Every line of the formula, in its order.</param>
/// <param name="Scales">What the weighed masses are multiples of.</param>
/// <param name="Explanation">How the flour was found.</param>
public sealed record Batch(BakersFormula Formula, IReadOnlyList<BatchLine> Lines, Scales Scales, Explanation Explanation) : IExplained
{
    /// <summary>The dough as the exact masses sum to it.</summary>
    public Mass Exact => Lines.Aggregate(default(Mass), (sum, line) => sum + line.Exact);

    /// <summary>
    /// The dough as the weighed masses sum to it: at most half a division of the large scale away from <see cref="Exact"/>.
    /// </summary>
    public Mass Weighed => Mass.FromGrams((double)Lines.Sum(line => (decimal)line.Weighed.Grams));

    /// <summary>All flour together, exact: the 100 %.</summary>
    public Mass Flour => Lines.Aggregate(default(Mass), (sum, line) => sum + line.Exact * line.Ingredient.FlourShare);
}
