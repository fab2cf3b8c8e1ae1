using ClassKit.Baking.Batches;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.Baking.Preferments;

/// <summary>
/// A dough with parts mixed ahead: the total formula, each sub-mix, and the final dough in which the sub-mixes are ingredients.
/// </summary>
/// <param name="Total">The overall formula.</param>
/// <param name="SubMixes">What is mixed ahead.</param>
/// <param name="Rows">Every ingredient over all columns.</param>
/// <param name="SubMixMasses">All of each sub-mix, as the final dough takes it.</param>
/// <remarks>
/// Final dough = total - sub-mixes, ingredient by ingredient.
/// Source: A. Faber, C. Ponsford, J. Yankellow, "Formatting Guild Formulas", Bread Bakers Guild of America, 2009.
/// </remarks>
public sealed record FormulaSheet(
    BakersFormula Total,
    IReadOnlyList<SubMix> SubMixes,
    IReadOnlyList<SheetRow> Rows,
    IReadOnlyList<Mass> SubMixMasses
) : IExplained
{
    /// <summary>Room for the last bits when everything of an ingredient is in the sub-mixes.</summary>
    private const double SlackPercent = 1e-9;

    /// <summary>All the dough.</summary>
    public Mass Dough => Rows.Aggregate(default(Mass), (sum, row) => sum + row.Total);

    /// <summary>What the final mixing puts together, the sub-mixes too; the same as <see cref="Dough"/>.</summary>
    public Mass FinalDough =>
        Rows.Aggregate(SubMixMasses.Aggregate(default(Mass), (sum, mass) => sum + mass), (sum, row) => sum + row.Final);

    /// <summary>The share of the total flour that is in sub-mixes.</summary>
    public double PrefermentedFlourPercent => SubMixes.Sum(mix => mix.PrefermentedFlourPercent);

    /// <summary>What the final mixing adds, ingredient by ingredient, and the whole dough as it comes together then.</summary>
    public Explanation Explanation =>
        new(
            $"{Total.Title}: the final dough",
            [
                .. Rows.Select(row => new ExplainedStep(
                    row.Ingredient.Name,
                    "total - what is mixed ahead",
                    string.Join(
                        " - ",
                        row.InSubMixes.Where(ahead => ahead.Grams > 0).Prepend(row.Total).Select(mass => Figures.Grams(mass))
                    ),
                    Figures.Grams(row.Final)
                )),
                new(
                    "dough",
                    "what is left to add + all of each part mixed ahead",
                    string.Join(
                        " + ",
                        Rows.Select(row => row.Final).Concat(SubMixMasses).Where(mass => mass.Grams > 0).Select(mass => Figures.Grams(mass))
                    ),
                    Figures.Grams(FinalDough)
                ),
            ],
            "What is mixed ahead is part of the total formula, not on top of it."
        );

    /// <summary>The sheet for a mass of total flour.</summary>
    /// <param name="total">The overall formula.</param>
    /// <param name="subMixes">What is mixed ahead: parts of the total, not on top of it.</param>
    /// <param name="flour">All flour of the dough together; above 0.</param>
    public static Computed<FormulaSheet> For(BakersFormula total, IReadOnlyList<SubMix> subMixes, Mass flour)
    {
        ArgumentNullException.ThrowIfNull(total);
        ArgumentNullException.ThrowIfNull(subMixes);
        if (!Scaling.FromFlour(total, flour, Scales.One(Mass.FromGrams(0.001))).TryGet(out _, out var wrong))
            return wrong;

        var percents = PercentById(total.Lines);
        foreach (var mix in subMixes)
        {
            if (mix.Lines.FirstOrDefault(line => !double.IsFinite(line.Percent) || line.Percent < 0) is { } odd)
                return new Impossibility(
                    "bad-percentage",
                    $"{odd.Ingredient.Name} stands at {Figures.Exact(odd.Percent)} % in {mix.Name}.",
                    "A percentage is not negative."
                );
            if (mix.Lines.FirstOrDefault(line => !percents.ContainsKey(line.Ingredient.Id)) is { } stranger)
                return new Impossibility(
                    "not-in-total",
                    $"{mix.Name} holds {stranger.Ingredient.Name}, which is not in the total formula.",
                    "A sub-mix is part of the total formula: add its ingredients there too."
                );
        }
        foreach (var (id, percent) in percents)
        {
            var ahead = subMixes.Sum(mix => mix.Lines.Where(line => line.Ingredient.Id == id).Sum(line => line.Percent));
            if (ahead > percent + SlackPercent)
                return new Impossibility(
                    "more-ahead-than-total",
                    $"The sub-mixes hold {Figures.Exact(ahead)} % of {IngredientOf(total, id).Name}, but the whole dough has only {Figures.Exact(percent)} %.",
                    "Put less of it into the sub-mixes or more into the total formula."
                );
        }

        var finalFlour = flour.Grams * (1 - PerHundred.Share(subMixes.Sum(mix => mix.PrefermentedFlourPercent)));
        return new FormulaSheet(
            total,
            subMixes,
            [
                .. percents.Select(entry =>
                {
                    Mass[] ahead =
                    [
                        .. subMixes.Select(mix =>
                            BakersPercent.Beside(flour, mix.Lines.Where(line => line.Ingredient.Id == entry.Key).Sum(line => line.Percent))
                        ),
                    ];
                    var all = BakersPercent.Beside(flour, entry.Value);
                    var left = Mass.FromGrams(Math.Max(0, all.Grams - ahead.Sum(mass => mass.Grams)));
                    return new SheetRow(
                        IngredientOf(total, entry.Key),
                        entry.Value,
                        all,
                        ahead,
                        left,
                        finalFlour > SlackPercent ? PerHundred.Of(left.Grams, finalFlour) : null
                    );
                }),
            ],
            [.. subMixes.Select(mix => BakersPercent.Beside(flour, mix.TotalPercent))]
        );
    }

    /// <summary>The overall formula of a dough that is written as a final dough and what was mixed ahead.</summary>
    /// <param name="id">The formula's id.</param>
    /// <param name="title">What it makes.</param>
    /// <param name="leavening">What chiefly makes it rise.</param>
    /// <param name="finalDough">What the final mixing adds besides the preferments.</param>
    /// <param name="mixedAhead">What is in each preferment.</param>
    public static Computed<BakersFormula> Overall(
        string id,
        string title,
        Leavening leavening,
        IReadOnlyList<WeighedIngredient> finalDough,
        params IReadOnlyList<WeighedIngredient>[] mixedAhead
    )
    {
        ArgumentNullException.ThrowIfNull(finalDough);
        ArgumentNullException.ThrowIfNull(mixedAhead);
        return Percentages.FromWeights(id, title, leavening, [.. finalDough, .. mixedAhead.SelectMany(mix => mix)]);
    }

    private static Dictionary<string, double> PercentById(IEnumerable<FormulaLine> lines) =>
        lines
            .GroupBy(line => line.Ingredient.Id)
            .ToDictionary(group => group.Key, group => group.Sum(line => line.Percent), StringComparer.Ordinal);

    private static Ingredient IngredientOf(BakersFormula total, string id) =>
        total.Lines.First(line => line.Ingredient.Id == id).Ingredient;
}
