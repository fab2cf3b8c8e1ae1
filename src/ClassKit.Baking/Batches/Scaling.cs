using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.Baking.Batches;

/// <summary>Scales baker's formulas to batches: from the flour, the dough, the pieces, or an ingredient that is short.</summary>
public static class Scaling
{
    private static readonly Mass FinestScale = Mass.FromGrams(0.0001);
    private static readonly Mass CoarsestScale = Mass.FromKilograms(100);

    /// <summary>The batch that holds a mass of all flour together.</summary>
    /// <param name="formula">What is scaled: flour as 100 %, every line above 0 %.</param>
    /// <param name="flour">All flours together; above 0.</param>
    /// <param name="scales">What the weighed masses are multiples of.</param>
    /// <remarks>Each ingredient = flour × its % / 100.</remarks>
    public static Computed<Batch> FromFlour(BakersFormula formula, Mass flour, Scales scales)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return BatchOf(formula, flour, "flour", scales, []);
    }

    /// <summary>The batch that makes a mass of mixed dough.</summary>
    /// <param name="formula">What is scaled: flour as 100 %, every line above 0 %.</param>
    /// <param name="dough">As it leaves the bowl; above 0.</param>
    /// <param name="scales">What the weighed masses are multiples of.</param>
    /// <remarks>
    /// Flour = dough × 100 / total %. Check value: 28,470 g at 170 % hold 16,747.06 g of flour
    /// (college worksheet "Baker's Percentage Worksheet", author and year not known).
    /// </remarks>
    public static Computed<Batch> FromDough(BakersFormula formula, Mass dough, Scales scales)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return FromDough(formula, dough, scales, []);
    }

    /// <summary>The batch that makes a number of pieces and covers the loss.</summary>
    /// <param name="formula">What is scaled.</param>
    /// <param name="pieces">How many; at least 1.</param>
    /// <param name="pieceMass">Dough in each; above 0.</param>
    /// <param name="loss">What does not become pieces.</param>
    /// <param name="scales">What the weighed masses are multiples of.</param>
    /// <remarks>Dough = pieces × mass / (1 - loss): the loss is a share of the mixed dough, not of the pieces.</remarks>
    public static Computed<Batch> FromPieces(BakersFormula formula, int pieces, Mass pieceMass, DoughLoss loss, Scales scales)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(loss);
        if (pieces < 1)
            return new Impossibility("no-pieces", $"{pieces} pieces were asked for.", "Ask for at least one.");
        if (Sanity.Mass(pieceMass, "dough in one piece", "no-piece-mass") is { } noPiece)
            return noPiece;

        var wanted = pieceMass * pieces;
        return loss.DoughFor(wanted)
            .Then(dough =>
            {
                var steps = new List<ExplainedStep>
                {
                    new("dough in the pieces", "pieces × mass of a piece", $"{pieces} × {Figures.Grams(pieceMass)}", Figures.Grams(wanted)),
                };
                if (loss.TotalPercent > 0)
                    steps.Add(
                        new(
                            "dough to mix",
                            "dough in the pieces / (1 - loss)",
                            $"{Figures.Grams(wanted)} / (1 - {Figures.Exact(loss.TotalPercent)} %)",
                            Figures.Grams(dough)
                        )
                    );
                return FromDough(formula, dough, scales, steps);
            });
    }

    /// <summary>The largest batch that an ingredient on hand allows.</summary>
    /// <param name="formula">What is scaled: flour as 100 %, every line above 0 %.</param>
    /// <param name="ingredient">The one that is short; in the formula.</param>
    /// <param name="onHand">How much of it there is; above 0.</param>
    /// <param name="scales">What the weighed masses are multiples of.</param>
    /// <remarks>
    /// Flour = on hand × 100 / the ingredient's %. Check value: 50 g of milk at 10 % of a formula that totals 163 % make 815 g of dough
    /// (common practice, no source).
    /// </remarks>
    public static Computed<Batch> FromIngredient(BakersFormula formula, Ingredient ingredient, Mass onHand, Scales scales)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(ingredient);
        var percent = formula.Lines.Where(line => line.Ingredient.Id == ingredient.Id).Sum(line => line.Percent);
        if (!(percent > 0) || !double.IsFinite(percent))
            return new Impossibility(
                "not-in-formula",
                $"{ingredient.Name} is not in {formula.Title}.",
                "Name an ingredient of the formula as the one that limits it."
            );

        if ((FormulaSanity.Of(formula) ?? Sanity.Mass(onHand, ingredient.Name, "nothing-to-scale-from")) is { } nothing)
            return nothing;

        var flour = BakersPercent.FlourBeside(onHand, percent);
        ExplainedStep step = new(
            "flour",
            "mass on hand × 100 / its %",
            $"{Figures.Grams(onHand)} × 100 / {Figures.Exact(percent)}",
            Figures.Grams(flour)
        );
        return BatchOf(formula, flour, ingredient.Name, scales, [step]);
    }

    private static Computed<Batch> FromDough(BakersFormula formula, Mass dough, Scales scales, IReadOnlyList<ExplainedStep> before)
    {
        var total = formula.TotalPercent;
        if (!(total > 0))
            return FormulaSanity.NoFlour(formula);
        if (FormulaSanity.Of(formula) is { } wrong)
            return wrong;
        if (Sanity.Mass(dough, "dough", "nothing-to-scale-from") is { } noDough)
            return noDough;
        var flour = BakersPercent.FlourBeside(dough, total);
        ExplainedStep step = new(
            "flour",
            "dough × 100 / total %",
            $"{Figures.Grams(dough)} × 100 / {Figures.Exact(total)}",
            Figures.Grams(flour)
        );
        return BatchOf(formula, flour, "dough", scales, [.. before, step]);
    }

    private static Computed<Batch> BatchOf(
        BakersFormula formula,
        Mass flour,
        string from,
        Scales scales,
        IReadOnlyList<ExplainedStep> steps
    )
    {
        ArgumentNullException.ThrowIfNull(scales);
        if (FormulaSanity.Of(formula) is { } wrong)
            return wrong;
        if (Sanity.Mass(flour, from, "nothing-to-scale-from") is { } nothing)
            return nothing;
        var dough = BakersPercent.Beside(flour, formula.TotalPercent);
        if (dough > Sanity.Heaviest)
            return new Impossibility(
                "batch-too-large",
                $"The batch would be {Figures.Exact(dough.Kilograms, 0)} kg.",
                $"ClassKit scales up to {Figures.Exact(Sanity.Heaviest.Kilograms, 0)} kg; look at the units of what was asked for."
            );
        if (scales.Small < FinestScale || scales.Large > CoarsestScale || scales.Small > scales.Large)
            return new Impossibility(
                "bad-scales",
                $"Scales with divisions of {Figures.Grams(scales.Large)} and {Figures.Grams(scales.Small)} were given.",
                "Divisions lie between 0.0001 g and 100 kg, and the scale for small amounts must be the finer or the same."
            );
        if (dough < scales.Large / 2)
            return new Impossibility(
                "scale-too-coarse",
                $"A batch of {Figures.Grams(dough)} was to be weighed on a scale that shows {Figures.Grams(scales.Large)}.",
                "Make a larger batch or use a finer scale."
            );

        var exact = formula.Lines.Select(line => (Line: line, Exact: BakersPercent.Beside(flour, line.Percent))).ToList();
        var each = exact.Select(item => new ExplainedStep(
            item.Line.Ingredient.Name,
            "flour × its % / 100",
            $"{Figures.Grams(flour)} × {Figures.Exact(item.Line.Percent)} / 100",
            Figures.Grams(item.Exact)
        ));
        return new Batch(
            formula,
            BatchRounding.Round(exact, scales),
            scales,
            new($"{formula.Title}: the batch", [.. steps, .. each], "Baker's percentages: all flour together is 100 %.")
        );
    }
}
