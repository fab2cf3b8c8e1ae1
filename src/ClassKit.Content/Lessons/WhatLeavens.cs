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
        var hasPowder = formula.Formula.Lines.Any(line =>
            line.Ingredient.Role == IngredientRole.ChemicalLeavening || line.Ingredient.Raises is not null
        );
        var against = formula.Formula.Leavening switch
        {
            Leavening.Yeast when !formula.Formula.IsFermented => "`leavening` is `yeast`, and there is no yeast or starter in the formula",
            Leavening.Chemical when !hasPowder => "`leavening` is `chemical`, and there is no soda or powder in the formula",
            Leavening.None when formula.Formula.IsFermented => "`leavening` is `none`, and there is yeast or starter in the formula",
            Leavening.None when hasPowder => "`leavening` is `none`, and there is soda or powder in the formula",
            _ => "",
        };
        if (against.Length > 0)
            problems.Doubt(
                said,
                against,
                "Write what lifts this bread, `steam`, `yeast`, `chemical` or, where nothing does, `none`; "
                    + (
                        formula.Formula.Leavening == Leavening.None
                            ? "or take out of the formula what makes gas."
                            : "or add to the formula what is missing."
                    )
            );
    }
}
