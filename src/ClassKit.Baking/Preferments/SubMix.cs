using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Preferments;

/// <summary>A part of the dough that is mixed ahead: poolish, sponge, levain, old dough, soaker.</summary>
/// <param name="Name">What it is called on the formula sheet.</param>
/// <param name="Lines">Its ingredients in percent of the <em>total</em> flour of the dough.</param>
/// <remarks>A soaker is one without flour. Whatever is in a sub-mix is part of the total formula, not on top of it.</remarks>
public sealed record SubMix(string Name, IReadOnlyList<FormulaLine> Lines)
{
    /// <summary>Its flour in percent of the total flour: the share of flour that is prefermented.</summary>
    public double PrefermentedFlourPercent => Lines.Where(line => line.Ingredient.Role == IngredientRole.Flour).Sum(line => line.Percent);

    /// <summary>All of it in percent of the total flour.</summary>
    public double TotalPercent => Lines.Sum(line => line.Percent);

    /// <summary>Its ingredients in percent of its own flour; empty for a soaker, which has none.</summary>
    public IReadOnlyList<FormulaLine> OwnPercentages =>
        PrefermentedFlourPercent > 0
            ? [.. Lines.Select(line => line with { Percent = PerHundred.Of(line.Percent, PrefermentedFlourPercent) })]
            : [];

    /// <summary>A preferment from its own formula and the share of the total flour that goes into it.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="prefermentedFlourPercent">Above 0, at most 100.</param>
    /// <param name="own">Percentages of its own flour, which is 100.</param>
    public static SubMix FromOwnPercentages(string name, double prefermentedFlourPercent, IReadOnlyList<FormulaLine> own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return new(name, [.. own.Select(line => line with { Percent = PerHundred.Part(line.Percent, prefermentedFlourPercent) })]);
    }
}
