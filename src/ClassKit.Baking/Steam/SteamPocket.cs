using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Steam;

/// <summary>A hollow in a bread that steam has blown up.</summary>
public static class SteamPocket
{
    private const double MostLitres = 1e6;

    /// <summary>The water that must turn to steam to fill a hollow, at the boiling point under <paramref name="pressure"/>.</summary>
    /// <param name="hollow">Not negative.</param>
    /// <param name="pressure">Outside; the little that the walls add is left out.</param>
    /// <remarks>mass = V / v_g: 1 L of steam at sea level is 0.598 g of water (v_g = 1.6733 L/g).</remarks>
    public static Computed<Mass> WaterToFill(Volume hollow, Pressure pressure)
    {
        if ((Sanity.Number(hollow.Litres, 0, MostLitres, "Hollow, in litres", "hollow-out-of-range") ?? Sanity.Air(pressure)) is { } odd)
            return odd;
        var water = Filling(hollow, pressure);
        return new Explanation(
            "Water for a hollow of steam",
            [
                Boiling(pressure),
                PerGram(pressure),
                new(
                    "water",
                    "hollow / room of a gram of steam",
                    $"{Figures.Millilitres(hollow)} / {Figures.Show(LitresPerGram(pressure))} L/g",
                    Figures.Grams(water)
                ),
            ],
            Model
        ).For(water);
    }

    /// <summary>The room that water takes once all of it is steam at the boiling point.</summary>
    /// <param name="water">Not negative.</param>
    /// <param name="pressure">Outside.</param>
    public static Computed<Volume> SteamFrom(Mass water, Pressure pressure)
    {
        if ((Sanity.Mass(water, "water", "negative-mass", orNone: true) ?? Sanity.Air(pressure)) is { } odd)
            return odd;
        var steam = Boiled(water, pressure);
        return new Explanation(
            "Steam from water",
            [
                Boiling(pressure),
                PerGram(pressure),
                new(
                    "steam",
                    "water × room of a gram of steam",
                    $"{Figures.Grams(water)} × {Figures.Show(LitresPerGram(pressure))} L/g",
                    Figures.Millilitres(steam)
                ),
            ],
            Model
        ).For(steam);
    }

    /// <summary>What share of a dough's water a hollow takes as steam, 0 to 1.</summary>
    /// <param name="hollow">Not negative.</param>
    /// <param name="formula">Of the dough around it.</param>
    /// <param name="dough">How much of it; above 0.</param>
    /// <param name="pressure">Outside.</param>
    public static Computed<double> ShareOfWater(Volume hollow, BakersFormula formula, Mass dough, Pressure pressure)
    {
        ArgumentNullException.ThrowIfNull(formula);
        if ((FormulaSanity.Of(formula) ?? Sanity.Mass(dough, "dough", "no-dough")) is { } odd)
            return odd;
        return WaterToFill(hollow, pressure)
            .Then<double>(needed =>
            {
                var water = DoughWater.In(formula, dough);
                if (needed > water)
                    return new Impossibility(
                        "not-enough-water",
                        $"The hollow takes {Figures.Grams(needed)} of water as steam, and the dough holds {Figures.Grams(water)}.",
                        "Ask for a smaller hollow or more dough."
                    );
                var share = needed / water;
                return new Explanation(
                    "Share of the dough's water",
                    [
                        new(
                            "all the water",
                            "dough × all water / total %",
                            $"{Figures.Grams(dough)} × {Figures.Exact(DoughWater.AllWaterPercent(formula), 1)} / {Figures.Exact(formula.TotalPercent, 1)}",
                            Figures.Grams(water)
                        ),
                        PerGram(pressure),
                        new(
                            "as steam",
                            "hollow / room of a gram of steam",
                            $"{Figures.Millilitres(hollow)} / {Figures.Show(LitresPerGram(pressure))} L/g",
                            Figures.Grams(needed)
                        ),
                        new(
                            "share",
                            "as steam / all the water",
                            $"{Figures.Grams(needed)} / {Figures.Grams(water)}",
                            Figures.Percent(share)
                        ),
                    ],
                    Model
                ).For(share);
            });
    }

    /// <summary>Bare arithmetic, for a pressure that has been looked at.</summary>
    internal static Volume Boiled(Mass water, Pressure pressure) => Volume.FromLitres(water.Grams * LitresPerGram(pressure));

    /// <summary>Bare arithmetic, for a pressure that has been looked at.</summary>
    internal static Mass Filling(Volume hollow, Pressure pressure) => Mass.FromGrams(hollow.Litres / LitresPerGram(pressure));

    private const string Model = "Saturated steam at the boiling point, IAPWS-IF97.";

    private static double LitresPerGram(Pressure pressure) => Saturation.VapourLitresPerGram(Saturation.BoilingPoint(pressure));

    private static ExplainedStep Boiling(Pressure pressure) =>
        ExplainedStep.Given(
            "boiling point",
            $"of water under {Figures.Hectopascals(pressure)}, IAPWS-IF97",
            Figures.Celsius(Saturation.BoilingPoint(pressure))
        );

    private static ExplainedStep PerGram(Pressure pressure) =>
        ExplainedStep.Given(
            "room of a gram of steam",
            "saturated, at that point, IAPWS-IF97",
            $"{Figures.Show(LitresPerGram(pressure))} L/g"
        );
}
