using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Chemistry;

/// <summary>Sodium bicarbonate and the gas that it gives.</summary>
public static class BakingSoda
{
    /// <summary>Grams of carbon dioxide from a gram of soda that acid neutralises: NaHCO3 + H+ → CO2 + H2O + Na+. 0.5239.</summary>
    public const double CarbonDioxideByAcid = MolarMass.CarbonDioxide / MolarMass.SodiumBicarbonate;

    /// <summary>
    /// Grams of carbon dioxide from a gram of soda that only heat breaks down: 2 NaHCO3 → Na2CO3 + H2O + CO2. 0.2619: half of the gas, and
    /// washing soda stays behind.
    /// </summary>
    public const double CarbonDioxideByHeat = CarbonDioxideByAcid / 2;

    /// <summary>The soda that gives a mass of carbon dioxide when acid neutralises all of it.</summary>
    public static Mass For(Mass carbonDioxide) => carbonDioxide / CarbonDioxideByAcid;
}
