namespace ClassKit.Baking;

/// <summary>Soda, acid and starch in one tin, known by the carbon dioxide that it makes available.</summary>
public static class BakingPowder
{
    /// <summary>What is assumed where the tin says nothing: the least that the US trade names, 12 % of the powder's mass.</summary>
    /// <remarks>bakingbusiness.com, Bakers Dictionary, "Baking powder": "at least 12 % available CO2".</remarks>
    public const double UnitedStatesMinimumShare = 0.12;

    /// <summary>The least that Canada allows, 10 %.</summary>
    /// <remarks>Food and Drug Regulations, C.R.C., c. 870, B.03.002.</remarks>
    public const double CanadianMinimumShare = 0.10;

    /// <summary>What a tin can be expected to have: from the US minimum to the 14 % that powders are proportioned for. Powders for bakeries are made up to 17 %.</summary>
    /// <remarks>B. Lowe, Experimental Cookery, "Batters and Doughs", after Chittick; chestofbooks.com.</remarks>
    public static Band<double> UsualShare { get; } = new(UnitedStatesMinimumShare, 0.13, 0.14);

    /// <summary>The gas that a mass of powder makes available.</summary>
    /// <param name="powder">Not negative.</param>
    /// <param name="availableShare">0 to 1.</param>
    public static Mass AvailableCarbonDioxide(Mass powder, double availableShare) => powder * availableShare;

    /// <summary>The share of soda in a powder of an available share: 12 % of carbon dioxide take 22.9 % of soda.</summary>
    public static double SodaShare(double availableShare) => availableShare / BakingSoda.CarbonDioxideByAcid;

    /// <summary>The available share of a powder mixed from soda, acid and filler.</summary>
    /// <param name="soda">Not negative.</param>
    /// <param name="acid">Not negative.</param>
    /// <param name="kind">The acid.</param>
    /// <param name="filler">Starch and the like; not negative.</param>
    public static Computed<double> AvailableShare(Mass soda, Mass acid, LeaveningAcid kind, Mass filler)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var powder = soda + acid + filler;
        return powder.Grams > 0
            ? Neutralization.Of(soda, acid, kind).CarbonDioxide / powder
            : new Impossibility("no-powder", "There is nothing in the powder.", "Give the masses of soda, acid and filler.");
    }

    /// <summary>The powder that gives as much gas as a mass of soda with enough acid.</summary>
    public static Computed<Mass> InPlaceOfSoda(Mass soda, double availableShare) => availableShare is > 0 and < 1
        ? soda * (BakingSoda.CarbonDioxideByAcid / availableShare)
        : NoShare(availableShare);

    /// <summary>The soda that, with enough acid, gives as much gas as a mass of powder.</summary>
    public static Computed<Mass> SodaInPlaceOf(Mass powder, double availableShare) => availableShare is > 0 and < 1
        ? BakingSoda.For(AvailableCarbonDioxide(powder, availableShare))
        : NoShare(availableShare);

    private static Impossibility NoShare(double share) => new(
        "no-available-gas", $"A powder with {Figures.Show(share * 100)} % of available carbon dioxide was given.", "Powders in tins have about 12 % to 14 %: give a share between 0 and 1.");
}
