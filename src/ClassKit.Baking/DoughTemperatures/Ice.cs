using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.DoughTemperatures;

/// <summary>How much of a dough's water goes in as ice when the tap is too warm.</summary>
/// <remarks>
/// Melting a gram of ice at 0 °C takes as much heat as warming a gram of water by 80 K: 144 Btu/lb over 1 Btu/(lb °F) is 144 °F = 80 K,
/// and 333.6 to 334.6 J/g over 4.186 to 4.187 J/(g K) is 79.7 to 79.9 K. 144 Btu/lb: Sosland Publishing, Baking Business, on ice as stored
/// cold.
/// </remarks>
public static class Ice
{
    /// <summary>The latent heat of melting over the specific heat of water, in kelvins.</summary>
    public const double MeltingKelvins = 80;

    /// <summary>The specific heat of ice over that of water: 2.108 over 4.187 J/(g K).</summary>
    /// <remarks>forum.arduino.cc, topic 522736, a baker's water meter: 2.108 J for a gram and a kelvin of ice.</remarks>
    public const double IceHeatOverWater = 2.108 / 4.187;

    private const double ColdestIce = -40;

    /// <summary>The ice that brings water from the tap to the wanted temperature.</summary>
    /// <param name="water">All the water that the formula asks for; above 0.</param>
    /// <param name="tap">As it comes: 0 °C to below 100 °C.</param>
    /// <param name="wanted">Below <paramref name="tap"/>; below 0 °C is a legal result of the dough temperature equation.</param>
    /// <param name="model">How ice is counted.</param>
    /// <param name="ice">How cold the ice is: -40 °C to 0 °C. Ice that has begun to melt is at 0 °C, and so it is assumed if nothing is
    /// said; from a freezer it is at -18 °C.</param>
    /// <remarks>
    /// W water, t tap, w wanted, in °C, and L = 80 plus what colder ice takes up before it melts. Replacing: W (t - w) / (t + L), which
    /// reproduces the bakery bakery supplier's table (there W (t - w) / (t + 112) in °F). Melt only: W (t - w) / L, a baker's worked sum,
    /// common practice, no source. Added: W (t - w) / (L + w).
    /// </remarks>
    public static Computed<IcedWater> For(
        Mass water,
        Temperature tap,
        Temperature wanted,
        IceModel model = IceModel.Replacing,
        Temperature ice = default
    )
    {
        if (Sanity.Mass(water, "water to cool", "no-water") is { } noWater)
            return noWater;
        if (tap.Celsius is < 0 or >= 100)
            return new Impossibility(
                "tap-not-liquid",
                $"A tap at {Figures.Celsius(tap)} was given.",
                "Tap water is between 0 °C and 100 °C."
            );
        if (Sanity.Temperature(ice, ColdestIce, 0, "Ice") is { } noIce)
            return noIce;
        if (wanted.Celsius >= tap.Celsius)
            return new IcedWater(
                default,
                water,
                new(
                    "Ice",
                    [
                        ExplainedStep.Given("ice", "the tap is cold enough", "0 g"),
                        ExplainedStep.Given("liquid water", "all of it", Figures.Grams(water)),
                    ],
                    ""
                )
            );

        var drop = tap.Celsius - wanted.Celsius;
        var latent = MeltingKelvins - ice.Celsius * IceHeatOverWater;
        var per = model switch
        {
            IceModel.Replacing => latent + tap.Celsius,
            IceModel.ReplacingMeltOnly => latent,
            IceModel.Added => latent + wanted.Celsius,
        };
        if (!(per > 0) || (drop > per && model != IceModel.Added) || drop > per * MostIcePerWater)
            return new Impossibility(
                "not-enough-water-to-freeze",
                $"Water as cold as {Figures.Celsius(wanted)} would take more ice than there is water.",
                "Chill the flour, mix with less friction, or ask for a warmer dough."
            );

        var asIce = water * (drop / per);
        var liquid = model == IceModel.Added ? water : water - asIce;
        var takesUp = Figures.Show(latent);
        var (formula, below) = model switch
        {
            IceModel.Replacing => ("water × (tap - wanted) / (80 + tap)", $"({takesUp} + {Figures.Exact(tap.Celsius)})"),
            IceModel.ReplacingMeltOnly => ("water × (tap - wanted) / 80", takesUp),
            IceModel.Added => ("water × (tap - wanted) / (80 + wanted)", $"({takesUp} + {Figures.Exact(wanted.Celsius)})"),
        };
        return new IcedWater(
            asIce,
            liquid,
            new(
                "Ice",
                [
                    .. ice.Celsius < 0
                        ? (ExplainedStep[])
                            [
                                new(
                                    "heat taken up",
                                    "80 + degrees below freezing × heat of ice / heat of water",
                                    $"80 + {Figures.Exact(-ice.Celsius)} × 2.108 / 4.187",
                                    takesUp
                                ),
                            ]
                        : [],
                    new(
                        "ice",
                        ice.Celsius < 0 ? formula.Replace("80", "heat taken up", StringComparison.Ordinal) : formula,
                        $"{Figures.Grams(water)} × ({Figures.Exact(tap.Celsius)} - {Figures.Exact(wanted.Celsius)}) / {below}",
                        Figures.Grams(asIce)
                    ),
                    model == IceModel.Added
                        ? ExplainedStep.Given("liquid water", "all the water, with the ice on top", Figures.Grams(liquid))
                        : new("liquid water", "water - ice", $"{Figures.Grams(water)} - {Figures.Grams(asIce)}", Figures.Grams(liquid)),
                ],
                model switch
                {
                    IceModel.Replacing => "Ice in place of water; its melt warms up with the rest.",
                    IceModel.ReplacingMeltOnly => "Ice in place of water; only its melting is counted.",
                    IceModel.Added => "Ice on top of the water.",
                }
            )
        );
    }

    /// <summary>On top of the water nobody puts more ice than there is water.</summary>
    private const double MostIcePerWater = 1;
}
