using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Formulas;

/// <summary>A dough or batter in baker's percentages: all flour together is 100 %.</summary>
/// <param name="Id">Lower-case letters, digits and underscores.</param>
/// <param name="Title">What it makes.</param>
/// <param name="Leavening">What chiefly makes it rise.</param>
/// <param name="Lines">The ingredients in the order of use.</param>
/// <remarks>Source: A. Faber, C. Ponsford, J. Yankellow, "Formatting Guild Formulas", Bread Bakers Guild of America, 2009.</remarks>
public sealed record BakersFormula(string Id, string Title, Leavening Leavening, IReadOnlyList<FormulaLine> Lines)
{
    /// <summary>All percentages together; more than 100 for anything that holds more than flour.</summary>
    public double TotalPercent => Lines.Sum(line => line.Percent);

    /// <summary>All flours together, that of a starter too; 100 in a formula that is in order.</summary>
    public double FlourPercent => Lines.Sum(line => line.Percent * line.Ingredient.FlourShare);

    /// <summary>True if a starter ferments it, alone or beside yeast.</summary>
    public bool HasStarter => Lines.Any(line => line.Ingredient.StarterOf is not null);

    /// <summary>True if yeast or a starter ferments it.</summary>
    public bool IsFermented => HasStarter || Lines.Any(line => line.Ingredient.Role == IngredientRole.Yeast);
}
