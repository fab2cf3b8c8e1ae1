using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Pages.Packs;

/// <summary>Leavenings and sources of gas in words.</summary>
internal static class LeaveningText
{
    /// <summary>What makes a bread rise: of soda and powder what it has.</summary>
    public static string Of(BakersFormula formula) =>
        formula.Leavening switch
        {
            // A bread of a series from which its leavening was left out.
            Leavening.Yeast
            or Leavening.Chemical
                when !formula.IsFermented
                    && !Has(formula, "self_rising_flour")
                    && formula.Lines.All(line => line.Ingredient.Role != IngredientRole.ChemicalLeavening) => "air and steam alone",
            Leavening.None => "air and steam alone",
            Leavening.Steam => "steam",
            Leavening.Yeast when formula.HasStarter => formula.Lines.Any(line => line.Ingredient.Role == IngredientRole.Yeast)
                ? "sourdough starter and yeast"
                : "sourdough starter",
            Leavening.Yeast => "yeast",
            Leavening.Chemical => (Has(formula, "baking_soda"), Has(formula, "baking_powder")) switch
            {
                (true, true) => "soda and baking powder",
                (true, false) => "soda",
                (false, true) => "baking powder",
                _ when Has(formula, "ammonium_bicarbonate") => "baker’s ammonia",
                _ when Has(formula, "potassium_bicarbonate") => "potassium bicarbonate",
                _ when Has(formula, "phosphate_powder") || Has(formula, "low_sodium_powder") || Has(formula, "self_rising_flour") =>
                    "baking powder",
                _ => "chemical leavening",
            },
        };

    private static bool Has(BakersFormula formula, string ingredient) => formula.Lines.Any(line => line.Ingredient.Id == ingredient);

    /// <summary>What makes the gas.</summary>
    public static string Of(GasSourceKind kind) =>
        kind switch
        {
            GasSourceKind.Air => "Air beaten in",
            GasSourceKind.Yeast => "Yeast",
            GasSourceKind.Soda => "Soda and acid",
            GasSourceKind.BakingPowder => "Baking powder",
            GasSourceKind.Ammonia => "Baker’s ammonia",
            GasSourceKind.Steam => "Steam",
        };
}
