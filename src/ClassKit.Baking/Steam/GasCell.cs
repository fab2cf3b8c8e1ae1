using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Steam;

/// <summary>A bubble in dough: some gas that stays as it is, and water vapour that comes and goes with the temperature.</summary>
/// <remarks>
/// The bubble's wall is wet, so its vapour is always at saturation pressure, and the dry gas carries only the rest of the outside pressure:
/// V = n R T / (P - p_sat(T)). Near the boiling point the vapour does most of the work: from 30 °C to 90 °C a bubble grows
/// 3.73 times, of which dry gas alone would be 1.20 times (Charles). Surface tension and the dough's own pull are left out, so this is an
/// upper bound.
/// </remarks>
public static class GasCell
{
    private const double MostMoles = 2e6;

    /// <summary>The room that dry gas takes together with the vapour that saturates it.</summary>
    /// <param name="dryGas">Without the vapour; not negative.</param>
    /// <param name="temperature">From 0 °C to below the boiling point.</param>
    /// <param name="pressure">Outside.</param>
    public static Computed<Volume> VolumeOf(AmountOfSubstance dryGas, Temperature temperature, Pressure pressure)
    {
        if (Sanity.Number(dryGas.Moles, 0, MostMoles, "Moles of gas", "negative-gas") is { } odd)
            return odd;
        return DryGasPressure(temperature, pressure)
            .Then(dry =>
            {
                var volume = IdealGas.Volume(dryGas, temperature, dry);
                return new Explanation(
                    "Volume of gas in a wet bubble",
                    [
                        VapourPressure("vapour pressure", temperature),
                        Dry("pressure of the dry gas", pressure, temperature, dry),
                        new(
                            "volume",
                            "n R T / pressure of the dry gas",
                            $"{Figures.Millimoles(dryGas)} × R × {Figures.Kelvin(temperature)} / {Figures.Pascals(dry)}",
                            Figures.Millilitres(volume)
                        ),
                    ],
                    Model
                ).For(volume);
            });
    }

    /// <summary>How many times larger a bubble gets from one temperature to another at the same outside pressure.</summary>
    /// <param name="from">From 0 °C to below the boiling point.</param>
    /// <param name="to">The same.</param>
    /// <param name="pressure">Outside.</param>
    public static Computed<double> Expansion(Temperature from, Temperature to, Pressure pressure) =>
        DryGasPressure(from, pressure)
            .Then(before =>
                DryGasPressure(to, pressure)
                    .Then(after =>
                    {
                        var times = to.Kelvin / from.Kelvin * before.Pascals / after.Pascals;
                        return new Explanation(
                            "Expansion of a wet bubble",
                            [
                                VapourPressure("vapour pressure before", from),
                                Dry("dry gas before", pressure, from, before),
                                VapourPressure("vapour pressure after", to),
                                Dry("dry gas after", pressure, to, after),
                                new(
                                    "expansion",
                                    "T after / T before × dry gas before / dry gas after",
                                    $"{Figures.Kelvin(to)} / {Figures.Kelvin(from)} × {Figures.Pascals(before)} / {Figures.Pascals(after)}",
                                    Figures.Show(times)
                                ),
                            ],
                            Model
                        ).For(times);
                    })
            );

    /// <summary>The share of a bubble's gas that is water vapour, 0 to 1.</summary>
    /// <param name="temperature">From 0 °C to below the boiling point.</param>
    /// <param name="pressure">Outside.</param>
    public static Computed<double> VapourShare(Temperature temperature, Pressure pressure) =>
        DryGasPressure(temperature, pressure)
            .Then(dry =>
            {
                var share = 1 - dry.Pascals / pressure.Pascals;
                return new Explanation(
                    "Vapour in a wet bubble",
                    [
                        VapourPressure("vapour pressure", temperature),
                        new(
                            "share of vapour",
                            "vapour pressure / pressure",
                            $"{Figures.Pascals(Saturation.PressureAt(temperature))} / {Figures.Pascals(pressure)}",
                            Figures.Percent(share)
                        ),
                    ],
                    Model
                ).For(share);
            });

    /// <summary>How many times larger dry gas gets: T2/T1.</summary>
    /// <param name="from">Above absolute zero.</param>
    /// <param name="to">After warming or cooling.</param>
    public static double DryExpansion(Temperature from, Temperature to) => to.Kelvin / from.Kelvin;

    /// <summary>
    /// Bare arithmetic, for a temperature and a pressure that have been looked at: the room of a mole of dry gas with its vapour.
    /// </summary>
    internal static Volume PerMole(Temperature temperature, Pressure pressure) =>
        IdealGas.Volume(AmountOfSubstance.FromMoles(1), temperature, DryPressure(temperature, pressure));

    /// <summary>Bare arithmetic: the outside pressure less that of the vapour.</summary>
    internal static Pressure DryPressure(Temperature temperature, Pressure pressure) =>
        Pressure.FromPascals(pressure.Pascals - Saturation.PressureAt(temperature).Pascals);

    private const string Model =
        "The bubble is saturated with vapour by IAPWS-IF97; R = 8.314462618 J/(mol K). Walls and surface tension are left out.";

    private static ExplainedStep VapourPressure(string quantity, Temperature temperature) =>
        ExplainedStep.Given(
            quantity,
            $"of water at {Figures.Celsius(temperature)}, IAPWS-IF97",
            Figures.Pascals(Saturation.PressureAt(temperature))
        );

    private static ExplainedStep Dry(string quantity, Pressure pressure, Temperature temperature, Pressure dry) =>
        new(
            quantity,
            "pressure - vapour pressure",
            $"{Figures.Pascals(pressure)} - {Figures.Pascals(Saturation.PressureAt(temperature))}",
            Figures.Pascals(dry)
        );

    private static Computed<Pressure> DryGasPressure(Temperature temperature, Pressure pressure)
    {
        if (Sanity.Air(pressure) is { } odd)
            return odd;
        if (temperature.Celsius < 0)
            return new Impossibility(
                "frozen",
                $"A dough at {Figures.Celsius(temperature)} was given.",
                "Below 0 °C its water freezes; give a temperature from 0 °C up."
            );
        var boiling = Saturation.BoilingPoint(pressure);
        if (temperature.Celsius >= boiling.Celsius)
            return new Impossibility(
                "at-the-boil",
                $"At {Figures.Exact(temperature.Celsius, 1)} °C water boils under {Figures.Exact(pressure.Hectopascals, 0)} hPa (from {Figures.Exact(boiling.Celsius, 1)} °C up), so a wet bubble would grow without limit.",
                "Ask for a temperature below the boiling point, or for the steam itself."
            );
        var dry = DryPressure(temperature, pressure);
        return dry.Pascals > 0
            ? dry
            : new Impossibility("at-the-boil", "Water boils here.", "Ask for a temperature below the boiling point.");
    }
}
