using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>A measured specific volume of a bread, to hold a forecast against.</summary>
/// <param name="Bread">What was measured.</param>
/// <param name="Leavening">What raised it.</param>
/// <param name="MillilitresPerGram">Volume over mass of the baked bread.</param>
/// <param name="Source">Where it is published.</param>
public sealed record PublishedVolume(string Bread, Leavening Leavening, PublishedRange MillilitresPerGram, string Source)
{
    /// <summary>How it was cooked.</summary>
    public CookingWay Way { get; init; } = CookingWay.Oven;

    private const string SteamedBreads = "S. Huang and D. Miskelly, Steamed Breads, table 2.1";

    private const string Tomography = "J. Food Eng. 159 (2015) 36, table 5 (apparent densities by two methods), PMC4384159";

    /// <summary>All that are known here. None was found for steam-raised shells.</summary>
    public static IReadOnlyList<PublishedVolume> All { get; } =
    [
        new(
            "White pan loaves of hard winter and spring wheat",
            Leavening.Yeast,
            new(4.7, 8.2),
            "J. Food Sci. Technol. 57 (2020) 3581, table 4, PMC7447701"
        ),
        new(
            "White bread, the least that a standard asks",
            Leavening.Yeast,
            new(4.0, 4.0),
            "J. Food Process. Technol. 6 (2015) 484, table 2"
        ),
        new("French bread", Leavening.Yeast, new(1 / 0.159, 1 / 0.124), Tomography),
        new("Multigrain bread", Leavening.Yeast, new(1 / 0.243, 1 / 0.241), Tomography),
        new("Rye bread", Leavening.Yeast, new(1 / 0.258, 1 / 0.224), Tomography),
        new("Southern steamed bread", Leavening.Yeast, new(3.0, 3.0), SteamedBreads) { Way = CookingWay.Steamer },
        new("Guangdong steamed bread", Leavening.Yeast, new(2.6, 3.4), SteamedBreads) { Way = CookingWay.Steamer },
        new("Cornbread", Leavening.Chemical, new(1 / 0.457, 1 / 0.439), Tomography),
        new("Rice muffins", Leavening.Chemical, new(1.84, 2.40), "Korean J. Food Preserv. 31 (2024) 256, table 3"),
    ];

    /// <summary>What was measured of other breads by a leavening and a way of cooking; empty where nothing was.</summary>
    public static IReadOnlyList<PublishedVolume> Of(Leavening leavening, CookingWay way = CookingWay.Oven) =>
        [.. All.Where(volume => volume.Leavening == leavening && volume.Way == way)];
}
