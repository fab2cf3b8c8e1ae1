using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Chemistry;

/// <summary>Soda, acid and starch in one tin, known by the carbon dioxide that it makes available.</summary>
public static class BakingPowder
{
    /// <summary>What is assumed where the tin says nothing: the least that the US trade names, 12 % of the powder's mass.</summary>
    /// <remarks>Sosland Publishing, Bakers Dictionary, "Baking powder": "at least 12 % available CO2".</remarks>
    public const double UnitedStatesMinimumShare = 0.12;

    /// <summary>The least that Canada allows, 10 %.</summary>
    /// <remarks>Food and Drug Regulations, C.R.C., c. 870, B.03.002.</remarks>
    public const double CanadianMinimumShare = 0.10;

    /// <summary>
    /// What a tin can be expected to have: from the US minimum to the 14 % that powders are proportioned for. Powders for bakeries are made
    /// up to 17 %.
    /// </summary>
    /// <remarks>B. Lowe, Experimental Cookery, "Batters and Doughs", after Chittick.</remarks>
    public static Band<double> UsualShare { get; } = new(UnitedStatesMinimumShare, 0.13, 0.14);

    /// <summary>Less than this is flour, more than this is more than pure soda gives.</summary>
    private const double LeastShare = 0.001;

    /// <summary>The gas that a mass of powder makes available.</summary>
    /// <param name="powder">Not negative.</param>
    /// <param name="availableShare">Above 0, at most the 0.5239 of pure soda.</param>
    public static Computed<Mass> AvailableCarbonDioxide(Mass powder, double availableShare)
    {
        if (WhatIsWrong(powder, "powder", availableShare) is { } odd)
            return odd;
        var gas = powder * availableShare;
        return Explanation
            .Of(
                "Carbon dioxide from baking powder",
                "carbon dioxide",
                "powder × available share",
                $"{Figures.Grams(powder)} × {Figures.Percent(availableShare)}",
                Figures.Grams(gas)
            )
            .For(gas);
    }

    /// <summary>The share of soda in a powder of an available share: 12 % of carbon dioxide take 22.9 % of soda.</summary>
    /// <param name="availableShare">Above 0, at most the 0.5239 of pure soda.</param>
    public static Computed<double> SodaShare(double availableShare)
    {
        if (WhatIsWrong(default, "powder", availableShare) is { } odd)
            return odd;
        var soda = availableShare / BakingSoda.CarbonDioxideByAcid;
        return Explanation
            .Of(
                "Soda in baking powder",
                "share of soda",
                "available share × 84.006 / 44.009",
                $"{Figures.Percent(availableShare)} × 84.006 / 44.009",
                Figures.Percent(soda)
            )
            .For(soda);
    }

    /// <summary>The available share of a powder mixed from soda, acid and filler.</summary>
    /// <param name="soda">Not negative.</param>
    /// <param name="acid">Not negative.</param>
    /// <param name="kind">The acid.</param>
    /// <param name="filler">Starch and the like; not negative.</param>
    public static Computed<double> AvailableShare(Mass soda, Mass acid, LeaveningAcid kind, Mass filler)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if (Sanity.Mass(filler, "filler", "negative-mass", orNone: true) is { } odd)
            return odd;
        return Neutralization
            .Of(soda, acid, kind)
            .Then<double>(mixed =>
            {
                var powder = soda + acid + filler;
                if (!(powder.Grams > 0))
                    return new Impossibility("no-powder", "There is nothing in the powder.", "Give the masses of soda, acid and filler.");
                var share = mixed.CarbonDioxide / powder;
                return new Explanation(
                    "Available carbon dioxide of a powder",
                    [
                        .. mixed.Explanation.Steps,
                        new(
                            "powder",
                            "soda + acid + filler",
                            $"{Figures.Grams(soda)} + {Figures.Grams(acid)} + {Figures.Grams(filler)}",
                            Figures.Grams(powder)
                        ),
                        new(
                            "available share",
                            "carbon dioxide / powder",
                            $"{Figures.Grams(mixed.CarbonDioxide)} / {Figures.Grams(powder)}",
                            Figures.Percent(share)
                        ),
                    ],
                    mixed.Explanation.Model
                ).For(share);
            });
    }

    /// <summary>The powder that gives as much gas as a mass of soda with enough acid.</summary>
    /// <param name="soda">Not negative.</param>
    /// <param name="availableShare">Of the powder: above 0, at most the 0.5239 of pure soda.</param>
    public static Computed<Mass> InPlaceOfSoda(Mass soda, double availableShare)
    {
        if (WhatIsWrong(soda, "soda", availableShare) is { } odd)
            return odd;
        var powder = soda * (BakingSoda.CarbonDioxideByAcid / availableShare);
        return Explanation
            .Of(
                "Baking powder in place of soda",
                "powder",
                "soda × 44.009 / 84.006 / available share",
                $"{Figures.Grams(soda)} × 44.009 / 84.006 / {Figures.Percent(availableShare)}",
                Figures.Grams(powder),
                "For the same gas. The acid that the soda was there to neutralise stays behind, and the crumb gets sourer."
            )
            .For(powder);
    }

    /// <summary>The soda that, with enough acid, gives as much gas as a mass of powder.</summary>
    /// <param name="powder">Not negative.</param>
    /// <param name="availableShare">Of the powder: above 0, at most the 0.5239 of pure soda.</param>
    public static Computed<Mass> SodaInPlaceOf(Mass powder, double availableShare)
    {
        if (WhatIsWrong(powder, "powder", availableShare) is { } odd)
            return odd;
        var soda = BakingSoda.For(powder * availableShare);
        return Explanation
            .Of(
                "Soda in place of baking powder",
                "soda",
                "powder × available share × 84.006 / 44.009",
                $"{Figures.Grams(powder)} × {Figures.Percent(availableShare)} × 84.006 / 44.009",
                Figures.Grams(soda),
                "For the same gas, and only with enough acid to neutralise it."
            )
            .For(soda);
    }

    private static Impossibility? WhatIsWrong(Mass mass, string what, double share) =>
        share is >= LeastShare and <= BakingSoda.CarbonDioxideByAcid
            ? Sanity.Mass(mass, what, "negative-mass", orNone: true)
            : new(
                "no-available-gas",
                $"A powder with {Figures.Exact(PerHundred.Of(share))} % of available carbon dioxide was given.",
                "Powders in tins have about 12 % to 14 %, and pure soda gives 52 %: give a share between 0 and 0.52."
            );
}
