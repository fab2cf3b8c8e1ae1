using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Chemistry;

/// <summary>Flour with leavening in it, held against what the law asks.</summary>
/// <param name="CarbonDioxideShare">Grams of carbon dioxide from a gram of the mixture.</param>
/// <param name="LeaveningPerFlour">Acid and soda together for a gram of flour.</param>
/// <param name="Explanation">How it was computed.</param>
/// <remarks>21 CFR 137.180; corn meal likewise, 137.270.</remarks>
public sealed record SelfRisingFlour(double CarbonDioxideShare, double LeaveningPerFlour, Explanation Explanation) : IExplained
{
    /// <summary>At least half a gram of carbon dioxide from 100 g.</summary>
    public const double MinimumCarbonDioxideShare = 0.005;

    /// <summary>
    /// What a packet can be expected to give: from the least that the law asks to half as much again, as mills add for what is lost in
    /// store. The upper end from memory.
    /// </summary>
    public static Band<double> UsualShare { get; } = new(MinimumCarbonDioxideShare, 0.006, 0.0075);

    /// <summary>At most 4.5 parts of acid and soda together for 100 parts of flour.</summary>
    public const double MaximumLeaveningPerFlour = 0.045;

    /// <summary>The least soda in 100 g, if acid neutralises all of it: 0.954 g.</summary>
    public static Mass MinimumSodaPer100Grams => BakingSoda.For(Mass.FromGrams(100 * MinimumCarbonDioxideShare));

    /// <summary>True if it gives gas enough.</summary>
    public bool HasGasEnough => CarbonDioxideShare >= MinimumCarbonDioxideShare;

    /// <summary>True if it holds no more leavening than allowed.</summary>
    public bool IsWithinLimit => LeaveningPerFlour <= MaximumLeaveningPerFlour;

    /// <summary>A mixture of flour, soda, acid and salt.</summary>
    /// <param name="flour">Above 0.</param>
    /// <param name="soda">Not negative.</param>
    /// <param name="acid">Not negative.</param>
    /// <param name="kind">The acid.</param>
    /// <param name="salt">Not negative.</param>
    public static Computed<SelfRisingFlour> Of(Mass flour, Mass soda, Mass acid, LeaveningAcid kind, Mass salt)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if ((Sanity.Mass(flour, "flour", "no-flour") ?? Sanity.Mass(salt, "salt", "negative-mass", orNone: true)) is { } odd)
            return odd;
        return Neutralization
            .Of(soda, acid, kind)
            .Then<SelfRisingFlour>(mixed =>
            {
                var all = flour + soda + acid + salt;
                var share = mixed.CarbonDioxide / all;
                var perFlour = (soda + acid) / flour;
                return Sanity.Number(perFlour, 0, 1, "Leavening for a gram of flour", "not-a-flour") is { } tooMuch
                    ? tooMuch
                    : new SelfRisingFlour(
                        share,
                        perFlour,
                        new(
                            "Self-rising flour",
                            [
                                .. mixed.Explanation.Steps,
                                new(
                                    "leavening for the flour",
                                    "(soda + acid) / flour",
                                    $"({Figures.Grams(soda)} + {Figures.Grams(acid)}) / {Figures.Grams(flour)}",
                                    Figures.Percent(perFlour)
                                ),
                                new(
                                    "available carbon dioxide",
                                    "carbon dioxide / all",
                                    $"{Figures.Grams(mixed.CarbonDioxide)} / ({Figures.Grams(flour)} + {Figures.Grams(soda)} + {Figures.Grams(acid)} + {Figures.Grams(salt)})",
                                    Figures.Percent(share)
                                ),
                            ],
                            "21 CFR 137.180: at least 0.5 % of carbon dioxide, at most 4.5 parts of acid and soda for 100 of flour."
                        )
                    );
            });
    }
}
