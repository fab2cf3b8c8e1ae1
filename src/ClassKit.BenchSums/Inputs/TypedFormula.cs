using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;

namespace ClassKit.BenchSums.Inputs;

/// <summary>A baker's formula in one line, in percentages or in masses.</summary>
internal static class TypedFormula
{
    private const string Title = "Your formula";

    private static readonly Impossibility Mixed = new(
        "mixed-amounts",
        "Some amounts are percentages and some are masses.",
        "Write all of them in one way."
    );

    /// <summary>A formula in either way.</summary>
    public static Notation<BakersFormula> Notation { get; } =
        new("a formula in baker's percentages or masses, as \"bread flour 100, water 65, salt 2\"", text =>
            TypedLine.ReadAll(text).Then(Formula)
        );

    /// <summary>A recipe in masses alone.</summary>
    public static Notation<IReadOnlyList<WeighedIngredient>> Masses { get; } =
        new("a recipe in masses, as \"bread flour 500 g, water 325 g, salt 10 g\"", text =>
            TypedLine
                .ReadAll(text)
                .Then(lines =>
                    lines.All(line => line.Mass is not null)
                        ? (Computed<IReadOnlyList<WeighedIngredient>>)Weighed(lines).AsReadOnly()
                        : new Impossibility("no-mass", "Not every ingredient has a mass.", "Write a mass beside each: bread flour 500 g.")
                )
        );

    /// <summary>Baker's percentages of a recipe in masses, with their working.</summary>
    public static Computed<BakersFormula> FromMasses(IReadOnlyList<WeighedIngredient> recipe) =>
        Percentages.FromWeights("typed", Title, LeaveningOf(recipe.Select(line => line.Ingredient)), recipe);

    private static Computed<BakersFormula> Formula(IReadOnlyList<TypedLine> lines)
    {
        if (lines.All(line => line.Mass is not null))
            return FromMasses(Weighed(lines));
        return lines.All(line => line.Percent is not null)
            ? new BakersFormula(
                "typed",
                Title,
                LeaveningOf(lines.Select(line => line.Ingredient)),
                [.. lines.Select(line => new FormulaLine(line.Ingredient, line.Percent!.Value))]
            )
            : Mixed;
    }

    private static List<WeighedIngredient> Weighed(IEnumerable<TypedLine> lines) =>
        [.. lines.Select(line => new WeighedIngredient(line.Ingredient, line.Mass!.Value))];

    /// <summary>What chiefly raises it, as far as the ingredients say: yeast before powder, and steam where there is neither.</summary>
    private static Leavening LeaveningOf(IEnumerable<Ingredient> ingredients)
    {
        var roles = ingredients.Select(ingredient => ingredient.Role).ToHashSet();
        return roles.Contains(IngredientRole.Yeast) ? Leavening.Yeast
            : roles.Contains(IngredientRole.ChemicalLeavening) ? Leavening.Chemical
            : Leavening.Steam;
    }
}
