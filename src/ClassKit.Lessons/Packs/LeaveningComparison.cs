using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>One formula's place in the comparison of leavenings.</summary>
/// <param name="Formula">The formula; its traits say in words what cannot be computed.</param>
/// <param name="Per100Flour">The gas of the dough that holds 100 g of flour.</param>
/// <param name="PerPiece">The gas of one piece.</param>
/// <param name="Bench">Minutes from the end of mixing to the oven.</param>
/// <param name="Oven">Minutes in the oven.</param>
/// <param name="SaltPercent">Salt, of the flour.</param>
/// <param name="SugarPercent">Sugars, of the flour.</param>
/// <param name="AllWaterPercent">All water, the flour's own too, of the flour.</param>
public sealed record LeaveningComparison(
    LessonFormula Formula,
    GasBudget Per100Flour,
    GasBudget PerPiece,
    Band<double> Bench,
    Band<double> Oven,
    double SaltPercent,
    double SugarPercent,
    double AllWaterPercent)
{
    internal static Computed<LeaveningComparison> Of(LessonFormula formula, Temperature mixed, Pressure pressure, GasBudgetSettings settings)
    {
        var stages = BakeStages.Of(formula, mixed);
        var lines = formula.Formula.Lines;
        return Budget(Mass.FromGrams(formula.Formula.TotalPercent)).Then(flour => Budget(formula.PieceMass).Then<LeaveningComparison>(piece => new LeaveningComparison(
            formula,
            flour,
            piece,
            Minutes(inOven: false),
            Minutes(inOven: true),
            Percent(IngredientRole.Salt),
            Percent(IngredientRole.Sugar),
            DoughWater.AllWaterPercent(formula.Formula))));

        Computed<GasBudget> Budget(Mass dough) => GasBudget.Of(formula.Formula, dough, stages, mixed, pressure, settings);

        Band<double> Minutes(bool inOven) => stages.Where(stage => stage.InOven == inOven)
            .Aggregate(default(Band<double>), (sum, stage) => sum.With(stage.Minutes, (left, right) => left + right));

        double Percent(IngredientRole role) => lines.Where(line => line.Ingredient.Role == role).Sum(line => line.Percent);
    }
}
