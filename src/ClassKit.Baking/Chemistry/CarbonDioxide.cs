using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.Chemistry;

/// <summary>Carbon dioxide by mass and by volume.</summary>
public static class CarbonDioxide
{
    /// <summary>The amount in a mass.</summary>
    public static AmountOfSubstance AmountIn(Mass carbonDioxide) =>
        AmountOfSubstance.FromMoles(carbonDioxide.Grams / MolarMass.CarbonDioxide);

    /// <summary>The mass of an amount.</summary>
    public static Mass MassOf(AmountOfSubstance carbonDioxide) => Mass.FromGrams(carbonDioxide.Moles * MolarMass.CarbonDioxide);

    /// <summary>
    /// The volume as a dry ideal gas, within 0.7 % of the real one. In dough use <see cref="GasCell.VolumeOf"/>, which adds the vapour.
    /// </summary>
    /// <param name="carbonDioxide">Not negative.</param>
    /// <param name="temperature">-40 °C to 400 °C.</param>
    /// <param name="pressure">Of a kitchen: 200 hPa to 3000 hPa.</param>
    /// <remarks>
    /// n R T / p. At 0 °C and 101 325 Pa the real gas has 1.977 g/L (drak.biz/guide/carbon-dioxide/data) and the ideal one 1.963 g/L.
    /// </remarks>
    public static Computed<Volume> DryVolume(Mass carbonDioxide, Temperature temperature, Pressure pressure)
    {
        if (
            (
                Sanity.Mass(carbonDioxide, "carbon dioxide", "negative-gas", orNone: true)
                ?? Sanity.Temperature(temperature, -40, 400, "Gas")
                ?? Sanity.Air(pressure)
            ) is
            { } odd
        )
            return odd;
        var volume = IdealGas.Volume(AmountIn(carbonDioxide), temperature, pressure);
        var amount = AmountIn(carbonDioxide);
        return new Explanation(
            "Volume of carbon dioxide",
            [
                new("amount", "mass / molar mass", $"{Figures.Grams(carbonDioxide)} / 44.009 g/mol", Figures.Millimoles(amount)),
                new(
                    "volume",
                    "n R T / p",
                    $"{Figures.Millimoles(amount)} × R × {Figures.Kelvin(temperature)} / {Figures.Pascals(pressure)}",
                    Figures.Millilitres(volume)
                ),
            ],
            "Dry ideal gas; R = 8.314462618 J/(mol K)."
        ).For(volume);
    }
}
