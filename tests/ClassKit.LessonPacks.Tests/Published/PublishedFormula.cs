using ClassKit.Baking.Ingredients;

namespace ClassKit.LessonPacks.Tests.Published;

/// <summary>The proportions of one published formula, in grams.</summary>
/// <param name="Source">Where they stand.</param>
/// <param name="Flour">All flour together.</param>
/// <param name="Rest">What goes with it.</param>
/// <remarks>
/// Cups and spoons are turned into grams with USDA SR28 household weights, written out here once more so that the program's own table is
/// not held against itself. An ingredient that a source does not have, or whose amount cannot be read there, is left out.
/// </remarks>
internal sealed record PublishedFormula(string Source, double Flour, params (Kind Kind, double Grams)[] Rest)
{
    public const double FlourCup = 125;
    public const double CakeFlourCup = 137;
    public const double MilkCup = 244;
    public const double EggLarge = 50;
    public const double ButterCup = 227;
    public const double ButterSpoon = 14.2;
    public const double OilCup = 218;
    public const double SugarCup = 200;
    public const double SugarSpoon = 12.6;
    public const double HoneyCup = 339;
    public const double SaltTeaspoon = 6;
    public const double PowderTeaspoon = 4.6;
    public const double YeastTeaspoon = 4;

    /// <summary>Milk weighs 1.03 g a millilitre: 244 g in a cup of 236.6 mL.</summary>
    public static double Milk(double millilitres) => millilitres * MilkCup / 236.588;

    /// <summary>Baker's percent of one kind; null if the source does not tell.</summary>
    public double? Percent(Kind kind) =>
        Rest.Any(part => part.Kind == kind) ? 100 * Rest.Where(part => part.Kind == kind).Sum(part => part.Grams) / Flour : null;

    /// <summary>The kind of an ingredient; null for flour.</summary>
    public static Kind? Of(Ingredient ingredient) =>
        ingredient.Role switch
        {
            IngredientRole.Liquid => Kind.Liquid,
            IngredientRole.Egg => Kind.Egg,
            IngredientRole.Fat => Kind.Fat,
            IngredientRole.Sugar => Kind.Sugar,
            IngredientRole.Salt => Kind.Salt,
            IngredientRole.Yeast => Kind.Yeast,
            IngredientRole.ChemicalLeavening => ingredient.Id == "baking_soda" ? Kind.Soda : Kind.Powder,
            _ => null,
        };
}
