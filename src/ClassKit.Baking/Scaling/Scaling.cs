namespace ClassKit.Baking;

/// <summary>Scales baker's formulas to batches: from the flour, the dough, the pieces, or an ingredient that is short.</summary>
public static class Scaling
{
    /// <summary>The heaviest batch taken seriously: anything above is a slip of the unit.</summary>
    private static readonly Mass Heaviest = Mass.FromKilograms(100_000);

    /// <summary>The batch that holds a mass of all flour together.</summary>
    /// <remarks>Each ingredient = flour × its % / 100.</remarks>
    public static Computed<Batch> FromFlour(BakersFormula formula, Mass flour, Scales scales)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return BatchOf(formula, flour, "flour", scales, []);
    }

    /// <summary>The batch that makes a mass of mixed dough.</summary>
    /// <remarks>
    /// Flour = dough × 100 / total %. Check value: 28,470 g at 170 % hold 16,747.06 g of flour
    /// (college worksheet "Baker's Percentage Worksheet", scribd.com/doc/79999339).
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
        if (pieceMass.Grams <= 0)
            return new Impossibility("no-piece-mass", $"A piece of {Figures.Grams(pieceMass)} was asked for.", "Give the dough in one piece, above 0 g.");

        var wanted = pieceMass * pieces;
        return loss.DoughFor(wanted).Then(dough =>
        {
            var steps = new List<ExplainedStep> { new("dough in the pieces", "pieces × mass of a piece", $"{pieces} × {Figures.Grams(pieceMass)}", Figures.Grams(wanted)) };
            if (loss.TotalPercent > 0)
                steps.Add(new("dough to mix", "dough in the pieces / (1 - loss)", $"{Figures.Grams(wanted)} / (1 - {Figures.Show(loss.TotalPercent)} %)", Figures.Grams(dough)));
            return FromDough(formula, dough, scales, steps);
        });
    }

    /// <summary>The largest batch that an ingredient on hand allows.</summary>
    /// <remarks>
    /// Flour = on hand × 100 / the ingredient's %. Check value: 50 g of milk at 10 % of a formula that totals 163 % make 815 g of dough
    /// (wildyeastblog.com/bp-exercises-3-answers).
    /// </remarks>
    public static Computed<Batch> FromIngredient(BakersFormula formula, Ingredient ingredient, Mass onHand, Scales scales)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(ingredient);
        var percent = formula.Lines.Where(line => line.Ingredient.Id == ingredient.Id).Sum(line => line.Percent);
        if (percent <= 0)
            return new Impossibility("not-in-formula", $"{ingredient.Name} is not in {formula.Title}.", "Name an ingredient of the formula as the one that limits it.");

        var flour = onHand * (100 / percent);
        ExplainedStep step = new("flour", "mass on hand × 100 / its %", $"{Figures.Grams(onHand)} × 100 / {Figures.Show(percent)}", Figures.Grams(flour));
        return BatchOf(formula, flour, ingredient.Name, scales, [step]);
    }

    private static Computed<Batch> FromDough(BakersFormula formula, Mass dough, Scales scales, IReadOnlyList<ExplainedStep> before)
    {
        var total = formula.TotalPercent;
        if (!(total > 0))
            return NoFlour(formula);
        var flour = dough * (100 / total);
        ExplainedStep step = new("flour", "dough × 100 / total %", $"{Figures.Grams(dough)} × 100 / {Figures.Show(total)}", Figures.Grams(flour));
        return BatchOf(formula, flour, "dough", scales, [.. before, step]);
    }

    private static Computed<Batch> BatchOf(BakersFormula formula, Mass flour, string from, Scales scales, IReadOnlyList<ExplainedStep> steps)
    {
        ArgumentNullException.ThrowIfNull(scales);
        if (WhatIsWrongWith(formula) is { } wrong)
            return wrong;
        if (flour.Grams <= 0)
            return new Impossibility("nothing-to-scale-from", $"The batch was to be scaled from no {from} at all, or from less.", "Give a mass above 0 g.");
        if (flour * (formula.TotalPercent / 100) > Heaviest)
            return new Impossibility("batch-too-large", $"The batch would be {Figures.Show(flour.Kilograms * formula.TotalPercent / 100, 0)} kg.", $"ClassKit scales up to {Figures.Show(Heaviest.Kilograms, 0)} kg; look at the units of what was asked for.");
        if (scales.Large.Grams <= 0 || scales.Small.Grams <= 0 || scales.Small > scales.Large)
            return new Impossibility("bad-scales", $"Scales with divisions of {Figures.Grams(scales.Large, 3)} and {Figures.Grams(scales.Small, 3)} were given.", "Both must be above 0 g, and the one for small amounts must be the finer or the same.");

        var exact = formula.Lines.Select(line => (line, flour * (line.Percent / 100))).ToList();
        var each = formula.Lines.Select(line => new ExplainedStep(
            line.Ingredient.Name, "flour × its % / 100", $"{Figures.Grams(flour)} × {Figures.Show(line.Percent)} / 100", Figures.Grams(flour * (line.Percent / 100))));
        return new Batch(formula, BatchRounding.Round(exact, scales), scales, new($"{formula.Title}: the batch", [.. steps, .. each], "Baker's percentages: all flour together is 100 %."));
    }

    private static Impossibility? WhatIsWrongWith(BakersFormula formula)
    {
        if (formula.Lines.FirstOrDefault(line => !double.IsFinite(line.Percent) || line.Percent <= 0) is { } line)
            return new("bad-percentage", $"{line.Ingredient.Name} stands at {Figures.Show(line.Percent)} % in {formula.Title}.", "A baker's percentage is above 0; leave the ingredient out if there is none.");
        if (!(formula.FlourPercent > 0))
            return NoFlour(formula);
        if (DoughWater.AddedLiquidPercent(formula) > MostLiquidPercent)
            return new("not-a-dough", $"{formula.Title} has {Figures.Show(DoughWater.AddedLiquidPercent(formula))} % of liquid.", $"Thin batters end near 300 %, and more than {Figures.Show(MostLiquidPercent)} % is a soup: look at the units and at what counts as flour.");
        return Math.Abs(formula.FlourPercent - 100) > FlourSlack
            ? new("flour-not-100", $"The flours of {formula.Title} add up to {Figures.Show(formula.FlourPercent)} %.", "All flour together is 100 %: divide every percentage by the flours' sum.")
            : null;
    }

    /// <summary>Above this much liquid a baker's percentage is a slip of the decimal point. No source.</summary>
    private const double MostLiquidPercent = 500;

    /// <summary>Three flours of 33.33 % are meant to be 100 %.</summary>
    private const double FlourSlack = 0.015;

    private static Impossibility NoFlour(BakersFormula formula) =>
        new("no-flour", $"{formula.Title} has no flour.", "Baker's percentages are shares of the flour: name at least one flour, and all of them as 100 %.");
}
