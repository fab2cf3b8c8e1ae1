using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.Chemistry;

/// <summary>
/// Carbon dioxide that a dough's water keeps: why bubbles grow late on the bench and quickly in the oven, which drives it out.
/// </summary>
/// <remarks>
/// CRC Handbook of Chemistry and Physics, "Solubility of carbon dioxide in water at various temperatures and pressures", good to 2 %.
/// In dough, salt and sugar lower it and part of the water is bound, so this is an upper bound.
/// </remarks>
public static class DissolvedCarbonDioxide
{
    private const double TablePascals = 100_000;
    private const double TableStepCelsius = 5;

    /// <summary>1000 × mole fraction under 100 kPa of carbon dioxide, every 5 °C from 0 °C to 100 °C.</summary>
    private static readonly double[] MoleFractions =
    [
        1.337,
        1.123,
        0.950,
        0.814,
        0.704,
        0.614,
        0.541,
        0.481,
        0.431,
        0.389,
        0.354,
        0.325,
        0.300,
        0.279,
        0.261,
        0.245,
        0.232,
        0.221,
        0.211,
        0.203,
        0.196,
    ];

    /// <summary>What water holds under carbon dioxide of a partial pressure, in proportion to it (Henry).</summary>
    /// <param name="water">Not negative.</param>
    /// <param name="temperature">0 °C to 100 °C.</param>
    /// <param name="carbonDioxide">Its partial pressure, up to about an atmosphere.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the table.</exception>
    public static AmountOfSubstance In(Mass water, Temperature temperature, Pressure carbonDioxide) =>
        AmountOfSubstance.FromMoles(water.Grams / MolarMass.Water * MoleFraction(temperature) * carbonDioxide.Pascals / TablePascals);

    /// <summary>The carbon dioxide that is in the bubbles, once it has settled between them and the water.</summary>
    /// <param name="made">All carbon dioxide there is.</param>
    /// <param name="air">Other dry gas in the bubbles; it dissolves too little to count.</param>
    /// <param name="water">In the dough.</param>
    /// <param name="temperature">0 °C to below the boiling point.</param>
    /// <param name="pressure">Outside.</param>
    /// <remarks>
    /// g of the amount made is gas when the rest, made - g, is what water holds under the partial pressure that g gives: a quadratic in g.
    /// </remarks>
    public static Computed<AmountOfSubstance> InBubbles(
        AmountOfSubstance made,
        AmountOfSubstance air,
        Mass water,
        Temperature temperature,
        Pressure pressure
    ) =>
        (
            Negative(made, "carbon dioxide")
            ?? Negative(air, "air")
            ?? Sanity.Mass(water, "water", "negative-mass", orNone: true)
            ?? Sanity.Temperature(temperature, 0, 100, "Dough")
        )
            is { } odd
            ? odd
            : GasCell
                .VapourShare(temperature, pressure)
                .Then(vapour =>
                {
                    var full = In(water, temperature, Pressure.FromPascals(pressure.Pascals * (1 - vapour)));
                    var half = AmountOfSubstance.FromMoles((made.Moles - air.Moles - full.Moles) / 2);
                    var gas = AmountOfSubstance.FromMoles(MolesInBubbles(made.Moles, air.Moles, full.Moles));
                    return new Explanation(
                        "Carbon dioxide in the bubbles",
                        [
                            ExplainedStep.Given(
                                "the water's fill",
                                $"under pure carbon dioxide at {Figures.Celsius(temperature)}, CRC Handbook",
                                Figures.Millimoles(full)
                            ),
                            new(
                                "half",
                                "(made - air - the water's fill) / 2",
                                $"({Figures.Millimoles(made)} - {Figures.Millimoles(air)} - {Figures.Millimoles(full)}) / 2",
                                Figures.Millimoles(half)
                            ),
                            new(
                                "in bubbles",
                                "half + √(half² + made × air)",
                                $"{Figures.Millimoles(half)} + √({Figures.Millimoles(half)} ^ 2 + {Figures.Millimoles(made)} × {Figures.Millimoles(air)})",
                                Figures.Millimoles(gas)
                            ),
                        ],
                        "The water holds carbon dioxide in proportion to its pressure in the bubbles (Henry); salt and sugar, which lower that, are left out."
                    ).For(gas);
                });

    /// <summary>
    /// Bare arithmetic. The root is taken on the side where nothing cancels, so that little gas does not drown in rounding.
    /// </summary>
    internal static double MolesInBubbles(double made, double air, double full)
    {
        var half = (made - air - full) / 2;
        var root = Math.Sqrt(half * half + made * air);
        return half >= 0 ? half + root
            : root - half > 0 ? made * air / (root - half)
            : 0;
    }

    private static Impossibility? Negative(AmountOfSubstance gas, string what) =>
        Sanity.Number(gas.Moles, 0, MostMoles, $"Moles of {what}", "negative-gas");

    /// <summary>The gas of 100 t of soda.</summary>
    private const double MostMoles = 2e6;

    private static double MoleFraction(Temperature temperature)
    {
        if (temperature.Celsius is < 0 or > 100)
            throw new ArgumentOutOfRangeException(
                nameof(temperature),
                temperature.Celsius,
                "The solubility of carbon dioxide is known here from 0 °C to 100 °C."
            );
        var place = temperature.Celsius / TableStepCelsius;
        var below = Math.Min((int)place, MoleFractions.Length - 2);
        return (MoleFractions[below] + (MoleFractions[below + 1] - MoleFractions[below]) * (place - below)) / 1000;
    }
}
