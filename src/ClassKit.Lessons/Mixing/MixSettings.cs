using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Mixing;

/// <summary>What is assumed of warm and cold where ingredients are mixed.</summary>
/// <param name="Refrigerator">What comes straight out of it is as cold; 4 °C where a class profile says nothing, as FDA advises 40
/// °F.</param>
/// <param name="MeltedFat">Melted in a pan of its own and cooled until just warm: 40 °C. Common practice, no source.</param>
/// <param name="WarmestLiquid">No ingredient is warmed above: 46 °C (115 °F), as <see cref="DoughTemperature"/> has it for yeast; sour milk
/// curdles not far above. Common practice, no source.</param>
/// <param name="TemperMinutes">How long tempered ingredients stand out, butter in pieces: 60 min. Common practice, no source.</param>
/// <param name="TemperedShare">How much of the way from refrigerator to kitchen they have gone by then: 0 to 1. Newton's law of cooling
/// with some 40 min for 250 g in a bowl in still air.</param>
/// <param name="Bowl">The heat of the bowl, at the kitchen's temperature, per heat of the batter: none, to that of 450 g of steel (0.5 J/(g
/// K)) for 375 g of batter.</param>
/// <param name="Probe">As far as a probe may be off: 1 °C, FDA Food Code 4-203.11.</param>
/// <param name="CookedPaste">As warm as a cooked paste is when egg goes in: 60 °C (140 °F). It leaves the pan near 75 °C and is stirred
/// until egg, whose white sets from some 61 °C on, cannot. Common practice, no source.</param>
/// <param name="MeltingFrom">Butter that is cooler sets again: it melts at 32 °C to 35 °C, J. Cheung, Melting Point of Butter, The Physics
/// Factbook (2003).</param>
public sealed record MixSettings(
    Temperature Refrigerator,
    Temperature MeltedFat,
    Temperature WarmestLiquid,
    int TemperMinutes,
    double TemperedShare,
    Band<double> Bowl,
    TemperatureDifference Probe,
    Temperature CookedPaste,
    Temperature MeltingFrom
)
{
    /// <summary>Butter that is cooler has not melted through: the upper end of the same figures.</summary>
    public Temperature MeltedThrough { get; init; } = Temperature.FromCelsius(35);

    /// <summary>
    /// No liquid that a starter meets is warmed above: wild yeasts and lactic bacteria weaken from some 40 °C (104 °F) on. Common practice,
    /// no source.
    /// </summary>
    public Temperature WarmestForStarter { get; init; } = Temperature.FromCelsius(40);

    /// <summary>Water as it is poured over flour; 100 °C at sea level.</summary>
    public Temperature Boiling { get; init; } = Temperature.FromCelsius(100);

    /// <summary>True for a class whose probes show °F alone: what it is told to aim at is a whole degree of them.</summary>
    public bool CountsFahrenheit { get; init; }

    /// <summary>The values named above. Mixing by hand warms nothing.</summary>
    public static MixSettings Default { get; } =
        new(
            ClassProfile.UsualRefrigerator,
            Temperature.FromCelsius(40),
            Temperature.FromCelsius(46),
            60,
            0.8,
            new(0, 0.1, 0.2),
            TemperatureDifference.FromKelvins(1),
            Temperature.FromCelsius(60),
            Temperature.FromCelsius(32)
        );

    /// <summary>The same in a class's own kitchen.</summary>
    public MixSettings In(ClassProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return this with
        {
            Refrigerator = profile.Refrigerator,
            CountsFahrenheit = profile.Units == UnitSystem.UnitedStates,
            Boiling = StandardAtmosphere.PressureAt(profile.AltitudeMetres).TryGet(out var pressure, out _)
                ? Saturation.BoilingPoint(pressure)
                : Boiling,
        };
    }

    /// <summary>The kitchen that lessons are checked for when no class is known; common practice, no source.</summary>
    public static Temperature UsualKitchen { get; } = Temperature.FromCelsius(22);
}
