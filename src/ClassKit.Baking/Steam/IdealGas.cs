using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Steam;

/// <summary>pV = nRT.</summary>
public static class IdealGas
{
    /// <summary>R in J/(mol K): CODATA 2018, the exact product of the exact Avogadro and Boltzmann constants.</summary>
    public const double Constant = 8.31446261815324;

    /// <summary>The volume of an amount of gas.</summary>
    /// <param name="gas">Not negative.</param>
    /// <param name="temperature">Of the gas.</param>
    /// <param name="pressure">Above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is 0. For what a user typed use <see cref="CarbonDioxide.DryVolume"/>,
    /// which explains.</exception>
    public static Volume Volume(AmountOfSubstance gas, Temperature temperature, Pressure pressure) =>
        Quantities.Volume.FromLitres(gas.Moles * Constant * temperature.Kelvin / pressure.Pascals * 1000);
}
