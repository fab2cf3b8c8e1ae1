namespace ClassKit.Baking;

/// <summary>Carbon dioxide by mass and by volume.</summary>
public static class CarbonDioxide
{
    /// <summary>The amount in moles.</summary>
    public static double Moles(Mass carbonDioxide) => carbonDioxide.Grams / MolarMass.CarbonDioxide;

    /// <summary>The mass of an amount in moles.</summary>
    public static Mass MassOf(double moles) => Mass.FromGrams(moles * MolarMass.CarbonDioxide);

    /// <summary>The volume as a dry ideal gas. In dough use <see cref="GasCell.VolumeOf"/>, which adds the vapour.</summary>
    public static Volume DryVolume(Mass carbonDioxide, Temperature temperature, Pressure pressure) => IdealGas.Volume(Moles(carbonDioxide), temperature, pressure);
}
