using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Yeast;

/// <summary>The gas that yeast makes in a dough over time.</summary>
public static class YeastGas
{
    private const double MostMinutes = 60 * 24 * 60;

    /// <summary>
    /// All carbon dioxide made some minutes after mixing: none during the lag, then at the model's rate, until the dough's sugars are used
    /// up.
    /// </summary>
    /// <param name="formula">With yeast in it.</param>
    /// <param name="dough">How much of it; above 0.</param>
    /// <param name="temperature">Of the dough; below 0 °C and above the yeast's death nothing is made.</param>
    /// <param name="minutes">Since mixing; not negative.</param>
    /// <param name="model">The yeast's model, with the source of each parameter.</param>
    public static Computed<Band<AmountOfSubstance>> Made(
        BakersFormula formula,
        Mass dough,
        Temperature temperature,
        double minutes,
        YeastGasModel model
    )
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(model);
        if (
            (
                FormulaSanity.Of(formula)
                ?? Sanity.Mass(dough, "dough", "no-dough")
                ?? Sanity.Number(minutes, 0, MostMinutes, "Minutes", "minutes-out-of-range")
            ) is
            { } odd
        )
            return odd;
        var yeast = Fermentation.YeastSolids(formula, dough);
        if (!(yeast.Grams > 0))
            return new Impossibility("no-yeast", $"{formula.Title} has no yeast.", "Without yeast there is no fermentation.");
        var rate = model.MolesPerMinute(yeast, temperature, Fermentation.SugarPercent(formula));
        var limit = Fermentation.SugarLimitMoles(formula, dough);
        var active = Math.Max(0, minutes - model.LagMinutes);
        var made = rate.With(limit, (perMinute, most) => Math.Min(perMinute * active, most));
        return new Explanation(
            "Carbon dioxide from yeast",
            [
                ExplainedStep.Given(
                    "rate",
                    $"{Figures.Grams(yeast)} of yeast solids at {Figures.Celsius(temperature)}, by the model",
                    $"{Figures.Show(rate.Typical * 60_000)} mmol/h"
                ),
                ExplainedStep.Given(
                    "active time",
                    $"what is left of {Figures.Exact(minutes)} min after {Figures.Exact(model.LagMinutes)} min of lag",
                    $"{Figures.Show(active)} min"
                ),
                ExplainedStep.Given("what the sugar allows", "all sugars of the dough, fermented", Millimoles(limit.Typical)),
                new(
                    "gas",
                    "rate × active time, no more than the sugar allows",
                    $"the lesser of ({Figures.Show(rate.Typical * 60_000)} mmol/h × {Figures.Show(active)} min) and {Millimoles(limit.Typical)}",
                    Millimoles(made.Typical)
                ),
            ],
            $"Known only as a range: {Millimoles(made.Low)} to {Millimoles(made.High)}. Yeast does not grow in number within a few hours, and the model leaves growth out."
        ).For(made.Map(AmountOfSubstance.FromMoles));
    }

    private static string Millimoles(double moles) => Figures.Millimoles(AmountOfSubstance.FromMoles(moles));
}
