namespace ClassKit.Baking;

/// <summary>Carbon dioxide by mass and by volume.</summary>
public static class CarbonDioxide
{
    /// <summary>The amount in a mass.</summary>
    public static AmountOfSubstance AmountIn(Mass carbonDioxide) => AmountOfSubstance.FromMoles(carbonDioxide.Grams / MolarMass.CarbonDioxide);

    /// <summary>The mass of an amount.</summary>
    public static Mass MassOf(AmountOfSubstance carbonDioxide) => Mass.FromGrams(carbonDioxide.Moles * MolarMass.CarbonDioxide);

    /// <summary>The volume as a dry ideal gas. In dough use <see cref="GasCell.VolumeOf"/>, which adds the vapour.</summary>
    public static Volume DryVolume(Mass carbonDioxide, Temperature temperature, Pressure pressure) => IdealGas.Volume(AmountIn(carbonDioxide), temperature, pressure);
}
