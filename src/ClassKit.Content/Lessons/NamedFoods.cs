using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.NamedFoods;

namespace ClassKit.Content.Lessons;

/// <summary>
/// Holds the foods that methods and demonstrations name against what the formulas list: what is in no list reaches no requisition and no
/// allergen.
/// </summary>
internal static class NamedFoods
{
    /// <summary>What methods name because it is in the flour.</summary>
    private static readonly HashSet<string> PartsOfFlour = new(StringComparer.OrdinalIgnoreCase) { "bran", "germ", "gluten", "starch" };

    /// <summary>Notes every food of a method that its bread's lists lack.</summary>
    public static void Check(Section? method, LessonFormula formula, ProblemList problems) => Check(method, [formula], problems);

    /// <summary>Notes every food of a lesson's section that none of its breads lists.</summary>
    public static void Check(Section? section, IReadOnlyList<LessonFormula> formulas, ProblemList problems)
    {
        string[] titles = [.. formulas.SelectMany(formula => new[] { formula.Formula.Title, formula.Pieces, formula.Piece })];
        foreach (var entry in Lists.Entries(section, new(problems.File)))
        {
            foreach (
                var missing in FoodMentions
                    .In(entry.Text.Text, titles, problems.Pantry)
                    .Where(food => !formulas.Any(food.IsListedIn))
                    .DistinctBy(food => (food.Words.ToUpperInvariant(), food.OnSurface))
            )
            {
                // The bran of a whole flour is in its bag.
                if (
                    PartsOfFlour.Contains(missing.Words)
                    && formulas.SelectMany(formula => formula.Ingredients).Any(listed => listed.Role == IngredientRole.Flour)
                )
                    continue;
                if (missing.MayBeMade)
                {
                    problems.Doubt(
                        entry.Text.Line,
                        Found(missing),
                        "Leave it if it is made here of what the formula lists. Bought ready, ClassKit does not know it, and nobody would be told of its allergens: take another one, or leave it out."
                    );
                    continue;
                }
                // "Rice" where rice flour is listed is most likely that, and "milk" beside milk powder may be.
                if (
                    !missing.OnSurface
                    && formulas
                        .SelectMany(formula => formula.Ingredients)
                        .Any(listed => listed.Name.Split(' ', ',').Contains(missing.Words, StringComparer.OrdinalIgnoreCase))
                )
                    problems.Doubt(entry.Text.Line, Found(missing), $"Leave it if it is what the formula lists. {Advice(missing)}");
                else
                    problems.Add(entry.Text.Line, Found(missing), Advice(missing));
            }
        }
    }

    private static string Found(FoodMention missing) =>
        missing.OnSurface
            ? $"`{missing.Words}` is done here, and nothing is listed for it under `## {SurfaceIngredients.Heading}`"
            : $"`{missing.Words}` is named here and stands in no list";

    private static string Advice(FoodMention missing) =>
        missing switch
        {
            { CanBe.Count: 0 } =>
                "ClassKit does not know this food, so nobody would be told of its allergens: take one that it knows, or leave it out.",
            { OnSurface: true } =>
                $"Add a table `| Ingredient | Amount | For |` there, with a row such as `| {missing.CanBe[0].Name} | 5 g a tin | the cups |`.",
            _ =>
                $"Add it to `## Formula`, to `## {FillingList.Heading}` where it is inside a piece, or, if it only touches the bread, to `## {SurfaceIngredients.Heading}`: what is in no list is neither ordered nor declared.",
        };
}
