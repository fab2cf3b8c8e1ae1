namespace ClassKit.Baking;

/// <summary>How much of a dough's water goes in as ice when the tap is too warm.</summary>
/// <remarks>
/// Melting a gram of ice at 0 °C takes as much heat as warming a gram of water by 80 K: 144 Btu/lb over 1 Btu/(lb °F) is 144 °F = 80 K,
/// and 333.6 to 334.6 J/g over 4.186 to 4.187 J/(g K) is 79.7 to 79.9 K. 144 Btu/lb: bakingbusiness.com/articles/58994.
/// </remarks>
public static class Ice
{
    /// <summary>The latent heat of melting over the specific heat of water, in kelvins.</summary>
    public const double MeltingKelvins = 80;

    /// <summary>The ice that brings water from the tap to the wanted temperature.</summary>
    /// <param name="water">All the water that the formula asks for; above 0.</param>
    /// <param name="tap">As it comes.</param>
    /// <param name="wanted">Below <paramref name="tap"/>; below 0 °C is a legal result of the dough temperature equation.</param>
    /// <param name="model">How ice is counted.</param>
    /// <remarks>
    /// W water, t tap, w wanted, in °C. Replacing: W (t - w) / (t + 80), which reproduces the bakery supplier's table at koerner-co.com
    /// (there W (t - w) / (t + 112) in °F). Melt only: W (t - w) / 80, elforodelpan.com, message 101358. Added: W (t - w) / (80 + w).
    /// </remarks>
    public static Computed<IcedWater> For(Mass water, Temperature tap, Temperature wanted, IceModel model = IceModel.Replacing)
    {
        if (water.Grams <= 0)
            return new Impossibility("no-water", $"There are {Figures.Grams(water)} of water to cool.", "Give the formula's water, above 0 g.");
        if (tap.Celsius is < 0 or >= 100)
            return new Impossibility("tap-not-liquid", $"A tap at {Figures.Show(tap.Celsius, 1)} °C was given.", "Tap water is between 0 °C and 100 °C.");
        if (wanted.Celsius >= tap.Celsius)
            return new IcedWater(default, water, new("Ice", [], "The tap is cold enough: no ice."));

        var drop = tap.Celsius - wanted.Celsius;
        var per = model switch
        {
            IceModel.Replacing => MeltingKelvins + tap.Celsius,
            IceModel.ReplacingMeltOnly => MeltingKelvins,
            IceModel.Added => MeltingKelvins + wanted.Celsius,
        };
        if (per <= 0 || (drop > per && model != IceModel.Added))
            return new Impossibility(
                "not-enough-water-to-freeze",
                $"Water as cold as {Figures.Show(wanted.Celsius, 1)} °C would take more ice than there is water.",
                "Chill the flour, mix with less friction, or ask for a warmer dough.");

        var ice = water * (drop / per);
        var liquid = model == IceModel.Added ? water : water - ice;
        var (formula, below) = model switch
        {
            IceModel.Replacing => ("water × (tap - wanted) / (80 + tap)", $"(80 + {Figures.Show(tap.Celsius, 1)})"),
            IceModel.ReplacingMeltOnly => ("water × (tap - wanted) / 80", "80"),
            IceModel.Added => ("water × (tap - wanted) / (80 + wanted)", $"(80 + {Figures.Show(wanted.Celsius, 1)})"),
        };
        return new IcedWater(ice, liquid, new(
            "Ice",
            [
                new("ice", formula, $"{Figures.Grams(water)} × ({Figures.Show(tap.Celsius, 1)} - {Figures.Show(wanted.Celsius, 1)}) / {below}", Figures.Grams(ice)),
                new("liquid water", model == IceModel.Added ? "water" : "water - ice", model == IceModel.Added ? Figures.Grams(water) : $"{Figures.Grams(water)} - {Figures.Grams(ice)}", Figures.Grams(liquid)),
            ],
            model switch
            {
                IceModel.Replacing => "Ice in place of water; its melt warms up with the rest.",
                IceModel.ReplacingMeltOnly => "Ice in place of water; only its melting is counted.",
                IceModel.Added => "Ice on top of the water.",
            }));
    }
}
