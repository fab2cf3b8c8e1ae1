using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Chemistry;

/// <summary>What becomes of soda and acid that meet: whichever is short sets the gas, and the rest stays in the crumb.</summary>
/// <param name="SodaUsed">Neutralised.</param>
/// <param name="SodaLeft">Tastes soapy and browns the crust; in the oven's heat it gives half of its gas and turns into washing
/// soda.</param>
/// <param name="AcidUsed">Neutralised.</param>
/// <param name="AcidLeft">Tastes sour.</param>
/// <param name="CarbonDioxide">From the neutralised soda only.</param>
/// <param name="CarbonDioxideByHeat">More gas that the soda left over can give if the crumb gets hot for long enough.</param>
/// <param name="Explanation">How it was computed.</param>
public sealed record Neutralization(
    Mass SodaUsed,
    Mass SodaLeft,
    Mass AcidUsed,
    Mass AcidLeft,
    Mass CarbonDioxide,
    Mass CarbonDioxideByHeat,
    Explanation Explanation
) : IExplained
{
    /// <summary>Puts soda and acid together; both not negative.</summary>
    /// <param name="soda">Not negative.</param>
    /// <param name="acid">Not negative.</param>
    /// <param name="kind">Which acid.</param>
    public static Computed<Neutralization> Of(Mass soda, Mass acid, LeaveningAcid kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if ((kind.WhatIsWrong(soda, "soda") ?? kind.WhatIsWrong(acid, kind.Name)) is { } odd)
            return odd;
        var matched = kind.SodaMatching(acid);
        var used = matched < soda ? matched : soda;
        var acidUsed = matched < soda ? acid : kind.Matching(used);
        var gas = used * BakingSoda.CarbonDioxideByAcid;
        return new Neutralization(
            used,
            soda - used,
            acidUsed,
            acid - acidUsed,
            gas,
            (soda - used) * BakingSoda.CarbonDioxideByHeat,
            new(
                $"Baking soda and {kind.Name}",
                [
                    new(
                        "soda that the acid neutralises",
                        "acid × neutralising value / 100",
                        $"{Figures.Grams(acid)} × {Figures.Exact(kind.NeutralizingValue)} / 100",
                        Figures.Grams(matched)
                    ),
                    new(
                        "soda used",
                        "the lesser of soda and that",
                        $"the lesser of {Figures.Grams(soda)} and {Figures.Grams(matched)}",
                        Figures.Grams(used)
                    ),
                    new("soda left", "soda - soda used", $"{Figures.Grams(soda)} - {Figures.Grams(used)}", Figures.Grams(soda - used)),
                    new(
                        "acid left",
                        "acid - 100 × soda used / neutralising value",
                        $"{Figures.Grams(acid)} - 100 × {Figures.Grams(used)} / {Figures.Exact(kind.NeutralizingValue)}",
                        Figures.Grams(acid - acidUsed)
                    ),
                    new("carbon dioxide", "soda used × 44.009 / 84.006", $"{Figures.Grams(used)} × 44.009 / 84.006", Figures.Grams(gas)),
                ],
                $"Neutralising value: {kind.Source}. Soda left over gives half of its gas when heated, and only in part before the crumb sets: it is not counted."
            )
        );
    }
}
