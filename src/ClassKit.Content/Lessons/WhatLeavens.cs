using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Holds what a bread is said to rise by against what is in it.</summary>
internal static class WhatLeavens
{
    /// <param name="said">The line of <c>leavening</c>.</param>
    /// <param name="formula">What was read.</param>
    /// <param name="problems">Where to note what is doubtful.</param>
    public static void Check(int? said, LessonFormula formula, ProblemList problems)
    {
        var (word, missing) = formula.Formula.Leavening switch
        {
            Leavening.Yeast when !formula.Formula.IsFermented => ("yeast", "yeast or starter"),
            Leavening.Chemical
                when !formula.Formula.Lines.Any(line =>
                    line.Ingredient.Role == IngredientRole.ChemicalLeavening || line.Ingredient.Id == "self_rising_flour"
                ) => ("chemical", "soda or powder"),
            _ => ("", ""),
        };
        if (missing.Length > 0)
            problems.Doubt(
                said,
                $"`leavening` is `{word}`, and there is no {missing} in the formula",
                "Write what lifts this bread, `steam`, `yeast` or `chemical`, or add to the formula what is missing."
            );
    }
}
