using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Household;

/// <summary>What a cup, a spoon and an ounce are. Kitchens and labels disagree, so it is a named setting.</summary>
/// <param name="Name">What the setting is called.</param>
/// <param name="Cup">A cup.</param>
/// <param name="FluidOunce">A fluid ounce.</param>
/// <param name="Tablespoon">A tablespoon.</param>
/// <param name="Teaspoon">A teaspoon.</param>
/// <param name="Ounce">An ounce of mass.</param>
/// <param name="Source">Where it is defined.</param>
public sealed record MeasureDefinition(
    string Name,
    Volume Cup,
    Volume FluidOunce,
    Volume Tablespoon,
    Volume Teaspoon,
    Mass Ounce,
    string Source
)
{
    /// <summary>US customary measures, exact: the default.</summary>
    public static MeasureDefinition UnitedStates { get; } =
        new(
            "US customary",
            Volume.FromCups(1),
            Volume.FromLitres(Volume.LitresPerFluidOunce),
            Volume.FromTablespoons(1),
            Volume.FromTeaspoons(1),
            Mass.FromOunces(1),
            "NIST SP 811, appendix B.8"
        );

    /// <summary>The rounded measures of US nutrition labels: a cup of 240 mL, an ounce of 28 g.</summary>
    public static MeasureDefinition NutritionLabel { get; } =
        new(
            "US nutrition label",
            Volume.FromMillilitres(240),
            Volume.FromMillilitres(30),
            Volume.FromMillilitres(15),
            Volume.FromMillilitres(5),
            Mass.FromGrams(28),
            "21 CFR 101.9(b)(5)(viii)"
        );

    /// <summary>Metric kitchens: a cup of 250 mL, spoons of 15 mL and 5 mL, an avoirdupois ounce.</summary>
    public static MeasureDefinition Metric { get; } =
        new(
            "metric cup",
            Volume.FromMillilitres(250),
            Volume.FromMillilitres(30),
            Volume.FromMillilitres(15),
            Volume.FromMillilitres(5),
            Mass.FromOunces(1),
            "common practice in metric kitchens, no source"
        );

    /// <summary>British imperial measures: a gallon of 4.54609 L, so a pint of 568 mL and a cup of half of it.</summary>
    public static MeasureDefinition Imperial { get; } =
        new(
            "imperial",
            Volume.FromLitres(LitresPerImperialGallon / 16),
            Volume.FromLitres(LitresPerImperialGallon / 160),
            Volume.FromLitres(LitresPerImperialGallon / 256),
            Volume.FromLitres(LitresPerImperialGallon / 768),
            Mass.FromOunces(1),
            "gallon: NIST SP 811, appendix B.8; cup and spoons as parts of it: from memory"
        );

    private const double LitresPerImperialGallon = 4.54609;

    /// <summary>A pint: two cups.</summary>
    public Volume Pint => Cup * 2;

    /// <summary>All of the settings, the default first.</summary>
    public static IReadOnlyList<MeasureDefinition> All { get; } = [UnitedStates, NutritionLabel, Metric, Imperial];
}
