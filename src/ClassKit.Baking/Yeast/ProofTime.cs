using ClassKit.Baking.Chemistry;
using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.Yeast;

/// <summary>How long yeast takes to raise a dough.</summary>
public static class ProofTime
{
    /// <summary>
    /// Of all the gas made until a dough was fully proofed, this share was still in it; the rest left while fermenting, punching and
    /// moulding.
    /// </summary>
    /// <remarks>
    /// The loaf of 100 g of flour that grew from 145 mL to 515 mL, as quoted from the baking literature: "only 40 % of the total CO2 was
    /// retained".
    /// </remarks>
    public const double HeldAfterPunching = 0.4;

    /// <summary>Minutes until the dough is some times its gas-free volume.</summary>
    /// <param name="formula">With yeast in it.</param>
    /// <param name="temperature">Of the dough.</param>
    /// <param name="rise">How many times its gas-free volume; above 1.</param>
    /// <param name="pressure">Outside.</param>
    /// <param name="heldShare">The share of the gas that stays in: 1 for a first rise without a leak, <see cref="HeldAfterPunching"/> over
    /// a whole fermentation with punching.</param>
    /// <param name="model">The yeast's model.</param>
    /// <remarks>lag + (gas needed + what the dough's water dissolves first) / (rate × share held). Low is the quickest.</remarks>
    public static Computed<Band<double>> Minutes(
        BakersFormula formula,
        Temperature temperature,
        double rise,
        Pressure pressure,
        double heldShare,
        YeastGasModel model
    )
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(model);
        if (FormulaSanity.Of(formula) is { } wrong)
            return wrong;
        if (!(rise is > 1 and <= MostRise))
            return new Impossibility(
                "no-rise",
                $"A rise to {Figures.Exact(rise)} times the volume was asked for.",
                $"Ask for more than 1 and at most {Figures.Exact(MostRise)}; doughs tear at 3 to 4."
            );
        if (heldShare is not (>= LeastHeld and <= 1))
            return new Impossibility(
                "no-gas-held",
                $"A dough that holds {Figures.Exact(PerHundred.Of(heldShare))} % of its gas was given.",
                "Give a share above 0, at most 1."
            );
        var dough = Mass.FromGrams(100);
        var yeast = Fermentation.YeastSolids(formula, dough);
        if (!(yeast.Grams > 0))
            return new Impossibility("no-yeast", $"{formula.Title} has no yeast.", "Without yeast nothing rises on the bench.");
        if (GasCell.VapourShare(temperature, pressure).Why is { } impossible)
            return impossible;

        var rate = model.MolesPerMinute(yeast, temperature, Fermentation.SugarPercent(formula));
        if (!(rate.Low > 0))
            return new Impossibility(
                "yeast-idle",
                $"At {Figures.Celsius(temperature)} yeast makes no gas.",
                $"Yeast works between 0 °C and {Figures.Celsius(model.Death)}."
            );

        var perMole = GasCell.PerMole(temperature, pressure);
        var gasFree = DoughVolume.GasFree(formula, dough);
        var room = gasFree * (rise - 1);
        var bubbles = room / perMole;
        var dissolved = DissolvedCarbonDioxide.In(DoughWater.In(formula, dough), temperature, pressure).Moles;
        var needed = (bubbles + dissolved) / heldShare;
        if (needed > Fermentation.SugarLimitMoles(formula, dough).High)
            return new Impossibility(
                "not-enough-sugar",
                $"A rise to {Figures.Exact(rise)} times the volume takes more gas than the dough's sugars can give.",
                "Ask for less, or add sugar."
            );
        Band<double> minutes = new(
            model.LagMinutes + needed / rate.High,
            model.LagMinutes + needed / rate.Typical,
            model.LagMinutes + needed / rate.Low
        );
        if (minutes.High > MostMinutes)
            return new Impossibility(
                "too-slow",
                $"It would take up to {Figures.Exact(minutes.High / 60 / 24, 0)} days.",
                "Use more yeast or a warmer dough."
            );
        return new Explanation(
            "Proof time, for 100 g of dough",
            [
                new(
                    "room for gas",
                    "gas-free dough × (rise - 1)",
                    $"{Figures.Millilitres(gasFree)} × ({Figures.Exact(rise)} - 1)",
                    Figures.Millilitres(room)
                ),
                ExplainedStep.Given(
                    "room of a mole",
                    $"of gas with its vapour at {Figures.Celsius(temperature)} under {Figures.Hectopascals(pressure)}",
                    $"{Figures.Show(perMole.Litres)} L/mol"
                ),
                new(
                    "gas in bubbles",
                    "room for gas / room of a mole",
                    $"{Figures.Millilitres(room)} / {Figures.Show(perMole.Litres)} L/mol",
                    Millimoles(bubbles)
                ),
                ExplainedStep.Given("gas in the water", "the dough's water full of carbon dioxide, CRC Handbook", Millimoles(dissolved)),
                new(
                    "gas to make",
                    "(bubbles + water) / share held",
                    $"({Millimoles(bubbles)} + {Millimoles(dissolved)}) / {Figures.Percent(heldShare)}",
                    Millimoles(needed)
                ),
                ExplainedStep.Given(
                    "rate",
                    $"{Figures.Grams(yeast)} of yeast solids at {Figures.Celsius(temperature)}, by the model",
                    $"{Figures.Show(rate.Typical * 60_000)} mmol/h"
                ),
                new(
                    "time",
                    "lag + gas to make / rate",
                    $"{Figures.Exact(model.LagMinutes)} min + {Millimoles(needed)} / {Figures.Show(rate.Typical * 60_000)} mmol/h",
                    $"{Figures.Show(minutes.Typical)} min"
                ),
            ],
            $"The yeast's rate is known only as a range: {Figures.Exact(minutes.Low, 0)} to {Figures.Exact(minutes.High, 0)} min."
        ).For(minutes);
    }

    private const double MostRise = 100;
    private const double LeastHeld = 0.01;
    private const double MostMinutes = 60 * 24 * 60;

    private static string Millimoles(double moles) => Figures.Millimoles(AmountOfSubstance.FromMoles(moles));
}
