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
                    && formula.Lines.All(line =>
                        line.Ingredient.Role != IngredientRole.ChemicalLeavening && line.Ingredient.Raises is null
                    ) => "air and steam alone",
            Leavening.None => "air and steam alone",
            Leavening.Steam => "steam",
            Leavening.Yeast when formula.HasStarter => formula.Lines.Any(line => line.Ingredient.Role == IngredientRole.Yeast)
                ? "sourdough starter and yeast"
                : "sourdough starter",
            Leavening.Yeast => "yeast",
            Leavening.Chemical => (Has(formula, RaisingKind.Soda), Has(formula, RaisingKind.Powder)) switch
            {
                (true, true) => "soda and baking powder",
                (true, false) => "soda",
                (false, true) => "baking powder",
                _ when Has(formula, RaisingKind.Ammonia) => "baker’s ammonia",
                _ when Has(formula, RaisingKind.PotassiumBicarbonate) => "potassium bicarbonate",
                _ => "chemical leavening",
            },
        };

    private static bool Has(BakersFormula formula, RaisingKind kind) => formula.Lines.Any(line => line.Ingredient.Raises?.Kind == kind);

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
