using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>The soda of a dough, and how much of it no acid meets.</summary>
/// <param name="Soda">All of it, potassium bicarbonate as the soda that it stands for; powders bring acid for their own.</param>
/// <param name="Left">What tastes of soap; most where the acid is least.</param>
public sealed record SodaBalance(Mass Soda, Band<Mass> Left)
{
    /// <summary>From this share on it is tasted. Common practice, no source.</summary>
    private const double Tasted = 0.25;

    /// <summary>True if some is left even of the sourest, and by typical values enough to be tasted.</summary>
    public bool IsTasted => Left.Low.Grams > 0 && Left.Typical.Grams > Soda.Grams * Tasted;

    /// <summary>The balance of a mass of dough.</summary>
    /// <param name="formula">With something in it.</param>
    /// <param name="dough">Not negative.</param>
    public static SodaBalance Of(BakersFormula formula, Mass dough)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var supply = new ChemicalSupply(formula, dough, GasBudgetSettings.Default);
        return new(supply.Soda, supply.SodaLeft);
    }
}
