using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Steam;

/// <summary>The air's pressure over height above sea level, on a day like the average one.</summary>
/// <remarks>US Standard Atmosphere 1976, equal to ISO 2533 up to 11 km. Weather shifts the pressure by some 3 % either way.</remarks>
public static class StandardAtmosphere
{
    private const double SeaLevelKelvin = 288.15;
    private const double KelvinPerMetre = 0.0065;
    private const double EarthRadiusMetres = 6_356_766;

    /// <summary>g0 M / (R* L) = 9.80665 × 28.9644 / (8.31432 × 6.5) as the standard defines them.</summary>
    private const double Exponent = 9.80665 * 28.9644 / (8.31432 * KelvinPerMetre * 1000);

    /// <summary>The lowest height known here, in metres.</summary>
    public const double LowestMetres = -500;

    /// <summary>The greatest height known here, in metres: above it the atmosphere follows another equation.</summary>
    public const double HighestMetres = 11_000;

    /// <summary>The pressure at a height of -500 m to 11 000 m.</summary>
    /// <param name="metres">Above sea level.</param>
    /// <param name="kind">What that height means: as on a map, if not said.</param>
    public static Computed<Pressure> PressureAt(double metres, AltitudeKind kind = AltitudeKind.Geometric)
    {
        if (!(metres is >= LowestMetres and <= HighestMetres))
            return new Impossibility(
                "altitude-out-of-range",
                $"An altitude of {Figures.Exact(metres, 0)} m was given.",
                $"Give one from {Figures.Exact(LowestMetres, 0)} m to {Figures.Exact(HighestMetres, 0)} m above sea level; a foot is 0.3048 m."
            );
        var geopotential = kind switch
        {
            AltitudeKind.Geopotential => metres,
            AltitudeKind.Geometric => EarthRadiusMetres * metres / (EarthRadiusMetres + metres),
        };
        var pressure = Pressure.FromPascals(
            Pressure.Standard.Pascals * Math.Pow(1 - KelvinPerMetre * geopotential / SeaLevelKelvin, Exponent)
        );
        return new Explanation(
            "Air pressure over altitude",
            [
                .. kind == AltitudeKind.Geometric
                    ? (ExplainedStep[])
                        [
                            new(
                                "geopotential altitude",
                                "r Z / (r + Z)",
                                $"{Figures.Show(EarthRadiusMetres)} m × {Figures.Exact(metres)} m / ({Figures.Show(EarthRadiusMetres)} m + {Figures.Exact(metres)} m)",
                                $"{Figures.Show(geopotential)} m"
                            ),
                        ]
                    : [],
                new(
                    "pressure",
                    "101,325 Pa × (1 - 0.0065 H / 288.15) ^ 5.25588",
                    $"101,325 Pa × (1 - 0.0065 × {Figures.Show(geopotential)} / 288.15) ^ {Figures.Exact(Exponent, 5)}",
                    Figures.Pascals(pressure)
                ),
            ],
            "US Standard Atmosphere 1976. Weather shifts it by some 3 % either way."
        ).For(pressure);
    }
}
