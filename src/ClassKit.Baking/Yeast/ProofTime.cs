namespace ClassKit.Baking;

/// <summary>How long yeast takes to raise a dough.</summary>
public static class ProofTime
{
    /// <summary>Of all the gas made until a dough was fully proofed, this share was still in it; the rest left while fermenting, punching and moulding.</summary>
    /// <remarks>The loaf of 100 g of flour that grew from 145 mL to 515 mL, as quoted from the baking literature: "only 40 % of the total CO2 was retained".</remarks>
    public const double HeldAfterPunching = 0.4;

    /// <summary>Minutes until the dough is some times its gas-free volume.</summary>
    /// <param name="formula">With yeast in it.</param>
    /// <param name="temperature">Of the dough.</param>
    /// <param name="rise">How many times its gas-free volume; above 1.</param>
    /// <param name="pressure">Outside.</param>
    /// <param name="heldShare">The share of the gas that stays in: 1 for a first rise without a leak, <see cref="HeldAfterPunching"/> over a whole fermentation with punching.</param>
    /// <param name="model">The yeast's model.</param>
    /// <remarks>lag + (gas needed + what the dough's water dissolves first) / (rate × share held). Low is the quickest.</remarks>
    public static Computed<Band<double>> Minutes(BakersFormula formula, Temperature temperature, double rise, Pressure pressure, double heldShare, YeastGasModel model)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(model);
        if (!(rise > 1))
            return new Impossibility("no-rise", $"A rise to {Figures.Show(rise)} times the volume was asked for.", "Ask for more than 1.");
        if (heldShare is not (> 0 and <= 1))
            return new Impossibility("no-gas-held", $"A dough that holds {Figures.Show(heldShare * 100)} % of its gas was given.", "Give a share above 0, at most 1.");
        var dough = Mass.FromGrams(100);
        var yeast = GasBudgeting.YeastIn(formula, dough);
        if (!(yeast.Grams > 0))
            return new Impossibility("no-yeast", $"{formula.Title} has no yeast.", "Without yeast nothing rises on the bench.");

        return GasCell.VolumeOf(AmountOfSubstance.FromMoles(1), temperature, pressure).Then<Band<double>>(perMole =>
        {
            var bubbles = DoughVolume.GasFree(formula, dough) * (rise - 1) / perMole;
            var dissolved = DissolvedCarbonDioxide.In(DoughWater.In(formula, dough), temperature, pressure).Moles;
            var needed = (bubbles + dissolved) / heldShare;
            var rate = model.MolesPerMinute(yeast, temperature, GasBudgeting.SugarPercent(formula));
            if (!(rate.Low > 0))
                return new Impossibility("yeast-idle", $"At {Figures.Show(temperature.Celsius, 1)} °C yeast makes no gas.", $"Yeast works between 0 °C and {Figures.Show(model.Death.Celsius, 1)} °C.");
            if (needed > Fermentation.SugarLimitMoles(formula, dough).High)
                return new Impossibility("not-enough-sugar", $"A rise to {Figures.Show(rise)} times the volume takes more gas than the dough's sugars can give.", "Ask for less, or add sugar.");
            return new Band<double>(model.LagMinutes + needed / rate.High, model.LagMinutes + needed / rate.Typical, model.LagMinutes + needed / rate.Low);
        });
    }
}
