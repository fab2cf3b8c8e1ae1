using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Yeast;

/// <summary>Sugar into alcohol and carbon dioxide.</summary>
/// <remarks>Gay-Lussac: C6H12O6 → 2 C2H5OH + 2 CO2. A disaccharide takes up a molecule of water first and gives twice as much.</remarks>
public static class Fermentation
{
    /// <summary>Grams of carbon dioxide from a gram of glucose or fructose: 0.4886.</summary>
    public const double CarbonDioxidePerHexose = 2 * MolarMass.CarbonDioxide / MolarMass.Glucose;

    /// <summary>Grams of carbon dioxide from a gram of sucrose or maltose: 0.5143.</summary>
    public const double CarbonDioxidePerDisaccharide = 4 * MolarMass.CarbonDioxide / MolarMass.Sucrose;

    /// <summary>Grams of alcohol from a gram of glucose or fructose: 0.5114.</summary>
    public const double EthanolPerHexose = 2 * MolarMass.Ethanol / MolarMass.Glucose;

    /// <summary>Sugars other than maltose in dry flour: 1.7 %.</summary>
    /// <remarks>R. M. Saunders, H. Ng, L. Kline, Cereal Chem. 49 (1972) 86-91.</remarks>
    public const double FlourSugarShare = 0.017;

    /// <summary>Maltose that the flour's enzymes make in a dough, per dry flour: up to 5.5 %, and none at first.</summary>
    /// <remarks>R. M. Saunders, H. Ng, L. Kline, Cereal Chem. 49 (1972) 86-91.</remarks>
    public static Band<double> MaltoseShare { get; } = new(0, 0.0275, 0.055);

    /// <summary>What of a dough is yeast without its water.</summary>
    internal static Mass YeastSolids(BakersFormula formula, Mass dough) =>
        dough * (DryPercent(formula, IngredientRole.Yeast) / formula.TotalPercent);

    /// <summary>Sugars that were added, without their water, in percent of the flour.</summary>
    internal static double SugarPercent(BakersFormula formula) => DryPercent(formula, IngredientRole.Sugar);

    /// <summary>The most carbon dioxide that yeast can make from the sugars of a dough, in moles.</summary>
    /// <param name="formula">The formula; milk sugar is left out, since baker's yeast does not ferment it.</param>
    /// <param name="dough">How much of it.</param>
    public static Band<double> SugarLimitMoles(BakersFormula formula, Mass dough)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var flour = dough.Grams / formula.TotalPercent;
        var added = SugarPercent(formula) * flour;
        var dryFlour =
            (
                DryPercent(formula, IngredientRole.Flour)
                + formula
                    .Lines.Where(line => line.Ingredient.StarterOf is not null)
                    .Sum(line => line.Percent * line.Ingredient.FlourShare * (1 - line.Ingredient.StarterOf!.WaterShare))
            ) * flour;
        return MaltoseShare.Map(maltose =>
            ((added + maltose * dryFlour) * CarbonDioxidePerDisaccharide + FlourSugarShare * dryFlour * CarbonDioxidePerHexose)
            / MolarMass.CarbonDioxide
        );
    }

    private static double DryPercent(BakersFormula formula, IngredientRole role) =>
        formula.Lines.Where(line => line.Ingredient.Role == role).Sum(line => line.Percent * (1 - line.Ingredient.WaterShare));
}
