using ClassKit.Baking.Explanations;

namespace ClassKit.Baking.Formulas;

/// <summary>Asks whether a baker's formula makes sense at all, before anything is computed from it.</summary>
internal static class FormulaSanity
{
    /// <summary>Above this much liquid a baker's percentage is a slip of the decimal point. No source.</summary>
    private const double MostLiquidPercent = 500;

    /// <summary>Three flours of 33.33 % are meant to be 100 %.</summary>
    private const double FlourSlack = 0.015;

    /// <summary>More of anything than this is a slip of the decimal point: brownies have 173 % of sugar.</summary>
    private const double MostPercent = 2_000;

    /// <summary>A milligram in 100 g of flour: less of anything is a slip, or no ingredient.</summary>
    private const double LeastPercent = 0.001;

    /// <summary>A baker's formula: percentages above 0, with flour as the 100 %, and not a soup.</summary>
    public static Impossibility? Of(BakersFormula formula)
    {
        if (formula.Lines.FirstOrDefault(line => !double.IsFinite(line.Percent) || line.Percent < LeastPercent) is { } line)
            return new(
                "bad-percentage",
                $"{line.Ingredient.Name} stands at {Figures.Exact(line.Percent)} % in {formula.Title}.",
                $"A baker's percentage is above 0 and at least {Figures.Exact(LeastPercent)} %; leave the ingredient out if there is none."
            );
        if (!(formula.FlourPercent > 0))
            return NoFlour(formula);
        if (DoughWater.AddedLiquidPercent(formula) > MostLiquidPercent)
            return new(
                "not-a-dough",
                $"{formula.Title} has {Figures.Exact(DoughWater.AddedLiquidPercent(formula))} % of liquid.",
                $"Thin batters end near 300 %, and more than {Figures.Exact(MostLiquidPercent)} % is a soup: look at the units and at what counts as flour."
            );
        if (Math.Abs(formula.FlourPercent - 100) > FlourSlack)
            return new(
                "flour-not-100",
                $"The flours of {formula.Title} add up to {Figures.Exact(formula.FlourPercent)} %.",
                "All flour together is 100 %: divide every percentage by the flours' sum."
            );
        return formula.Lines.FirstOrDefault(line => line.Percent > MostPercent) is { } most
            ? new(
                "bad-percentage",
                $"{most.Ingredient.Name} stands at {Figures.Exact(most.Percent)} % in {formula.Title}.",
                $"More than {Figures.Exact(MostPercent)} % of the flour is a slip: look at the units."
            )
            : null;
    }

    /// <summary>There is nothing that could be the 100 %.</summary>
    public static Impossibility NoFlour(BakersFormula formula) =>
        new(
            "no-flour",
            $"{formula.Title} has no flour.",
            "Baker's percentages are shares of the flour: name at least one flour, and all of them as 100 %."
        );
}
