using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Notes a formula in which so much soda meets no acid that it will be tasted.</summary>
internal static class LeftSoda
{
    public static void Check(Section? table, LessonFormula formula, ProblemList problems)
    {
        if (
            formula.Formula.Lines.FirstOrDefault(line =>
                line.Ingredient.Raises is { Kind: RaisingKind.Soda or RaisingKind.PotassiumBicarbonate }
            )
                is not { } soda
            || SodaBalance.Of(formula.Formula, Mass.FromGrams(formula.Formula.TotalPercent)) is not { IsTasted: true } balance
        )
            return;
        var met = balance.Soda.Grams - balance.Left.Typical.Grams;
        problems.Doubt(
            table?.Line,
            met > 0
                ? FormattableString.Invariant(
                    $"Of {soda.Percent:0.##} % {soda.Ingredient.Name.ToLowerInvariant()} no acid of the formula meets {balance.Left.Low.Grams:0.##} to {balance.Left.High.Grams:0.##} %, which will taste soapy"
                )
                : FormattableString.Invariant(
                    $"No acid of the formula meets its {soda.Percent:0.##} % {soda.Ingredient.Name.ToLowerInvariant()}, which will taste soapy"
                ),
            (
                met > 0
                    ? FormattableString.Invariant(
                        $"About {met:0.##} % are met: take so much, with baking powder for the rest of the rise, or add what is sour"
                    )
                    : "Take baking powder in its place, or add what is sour"
            ) + " (buttermilk, yogurt, cream of tartar). Leave it if it is meant."
        );
    }
}
