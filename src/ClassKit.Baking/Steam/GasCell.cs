namespace ClassKit.Baking;

/// <summary>A bubble in dough: some gas that stays as it is, and water vapour that comes and goes with the temperature.</summary>
/// <remarks>
/// The bubble's wall is wet, so its vapour is always at saturation pressure, and the dry gas carries only the rest of the outside pressure:
/// V = n R T / (P - p_sat(T)). Near the boiling point the vapour does most of the work: from 30 °C to 90 °C a bubble grows
/// 3.73 times, of which dry gas alone would be 1.20 times (Charles). Surface tension and the dough's own pull are left out, so this is an upper bound.
/// </remarks>
public static class GasCell
{
    /// <summary>The room that dry gas takes together with the vapour that saturates it.</summary>
    /// <param name="dryGas">Without the vapour; not negative.</param>
    /// <param name="temperature">From 0 °C to below the boiling point.</param>
    /// <param name="pressure">Outside.</param>
    public static Computed<Volume> VolumeOf(AmountOfSubstance dryGas, Temperature temperature, Pressure pressure) =>
        DryGasPressure(temperature, pressure).Then<Volume>(dry => IdealGas.Volume(dryGas, temperature, dry));

    /// <summary>How many times larger a bubble gets from one temperature to another at the same outside pressure.</summary>
    public static Computed<double> Expansion(Temperature from, Temperature to, Pressure pressure) =>
        DryGasPressure(from, pressure).Then(before => DryGasPressure(to, pressure).Then<double>(after =>
            to.Kelvin / from.Kelvin * before.Pascals / after.Pascals));

    /// <summary>The share of a bubble's gas that is water vapour, 0 to 1.</summary>
    public static Computed<double> VapourShare(Temperature temperature, Pressure pressure) =>
        DryGasPressure(temperature, pressure).Then<double>(dry => 1 - dry.Pascals / pressure.Pascals);

    /// <summary>How many times larger dry gas gets: T2/T1.</summary>
    public static double DryExpansion(Temperature from, Temperature to) => to.Kelvin / from.Kelvin;

    private static Computed<Pressure> DryGasPressure(Temperature temperature, Pressure pressure)
    {
        if (temperature.Celsius < 0)
            return new Impossibility("frozen", $"A dough at {Figures.Show(temperature.Celsius, 1)} °C was given.", "Below 0 °C its water freezes; give a temperature from 0 °C up.");
        var boiling = Saturation.BoilingPoint(pressure);
        if (temperature.Celsius >= boiling.Celsius)
            return new Impossibility(
                "at-the-boil",
                $"At {Figures.Show(temperature.Celsius, 1)} °C water boils under {Figures.Show(pressure.Hectopascals, 0)} hPa (from {Figures.Show(boiling.Celsius, 1)} °C up), so a wet bubble would grow without limit.",
                "Ask for a temperature below the boiling point, or for the steam itself.");
        return Pressure.FromPascals(pressure.Pascals - Saturation.PressureAt(temperature).Pascals);
    }
}
