using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Chemistry;

/// <summary>What gives carbon dioxide off: baking soda and what stands in for it.</summary>
/// <param name="Id">Lower-case letters, digits and underscores.</param>
/// <param name="Name">As the trade calls it.</param>
/// <param name="CarbonDioxideByAcid">Grams of carbon dioxide from a gram that acid neutralises.</param>
/// <param name="CarbonDioxideByHeat">Grams of carbon dioxide from a gram that only heat breaks down.</param>
/// <param name="AmmoniaByHeat">Grams of ammonia given off beside it; it must bake out, so it is for thin dry goods only.</param>
/// <param name="SodiumShare">Sodium by mass, 0 to 1.</param>
/// <remarks>Stoichiometry with IUPAC atomic weights.</remarks>
public sealed record Carbonate(
    string Id,
    string Name,
    double CarbonDioxideByAcid,
    double CarbonDioxideByHeat,
    double AmmoniaByHeat,
    double SodiumShare
)
{
    /// <summary>Baking soda, NaHCO3.</summary>
    public static Carbonate BakingSoda { get; } =
        new(
            "baking_soda",
            "Baking soda",
            Chemistry.BakingSoda.CarbonDioxideByAcid,
            Chemistry.BakingSoda.CarbonDioxideByHeat,
            0,
            MolarMass.Sodium / MolarMass.SodiumBicarbonate
        );

    /// <summary>Potassium bicarbonate, KHCO3: for less sodium.</summary>
    public static Carbonate PotassiumBicarbonate { get; } =
        new(
            "potassium_bicarbonate",
            "Potassium bicarbonate",
            MolarMass.CarbonDioxide / MolarMass.PotassiumBicarbonate,
            MolarMass.CarbonDioxide / MolarMass.PotassiumBicarbonate / 2,
            0,
            0
        );

    /// <summary>Baker's ammonia, NH4HCO3: heat alone turns all of it into gas.</summary>
    public static Carbonate BakersAmmonia { get; } =
        new(
            "bakers_ammonia",
            "Baker's ammonia",
            MolarMass.CarbonDioxide / MolarMass.AmmoniumBicarbonate,
            MolarMass.CarbonDioxide / MolarMass.AmmoniumBicarbonate,
            MolarMass.Ammonia / MolarMass.AmmoniumBicarbonate,
            0
        );

    /// <summary>All of them, baking soda first.</summary>
    public static IReadOnlyList<Carbonate> All { get; } = [BakingSoda, PotassiumBicarbonate, BakersAmmonia];

    /// <summary>The mass of this that gives as much carbon dioxide, with enough acid, as a mass of another.</summary>
    /// <param name="other">What is replaced.</param>
    /// <param name="mass">How much of it; not negative.</param>
    public Computed<Mass> InPlaceOf(Carbonate other, Mass mass)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (
            (
                Sanity.Mass(mass, other.Name, "negative-mass", orNone: true)
                ?? Sanity.Number(CarbonDioxideByAcid, 0.01, 1, $"Carbon dioxide from {Name}", "no-available-gas")
                ?? Sanity.Number(other.CarbonDioxideByAcid, 0.01, 1, $"Carbon dioxide from {other.Name}", "no-available-gas")
            ) is
            { } odd
        )
            return odd;
        var needed = mass * (other.CarbonDioxideByAcid / CarbonDioxideByAcid);
        return Explanation
            .Of(
                $"{Name} in place of {other.Name}",
                Name,
                "mass × carbon dioxide of the one / of the other",
                $"{Figures.Grams(mass)} × {Figures.Show(other.CarbonDioxideByAcid)} / {Figures.Show(CarbonDioxideByAcid)}",
                Figures.Grams(needed),
                "Stoichiometry, IUPAC atomic weights."
            )
            .For(needed);
    }
}
