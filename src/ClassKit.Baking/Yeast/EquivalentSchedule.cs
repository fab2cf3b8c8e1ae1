namespace ClassKit.Baking;

/// <summary>Fermentations that make the same gas: less yeast and longer, warmer and shorter, overnight in the cold.</summary>
public static class EquivalentSchedule
{
    /// <summary>The minutes that make as much gas as a known schedule does.</summary>
    /// <param name="minutes">Of the known schedule, above 0.</param>
    /// <param name="known">Its dough temperature.</param>
    /// <param name="planned">The dough temperature planned.</param>
    /// <param name="yeastRatio">The yeast planned over the yeast known; above 0.</param>
    /// <param name="model">The yeast's response to temperature.</param>
    /// <remarks>minutes × rate(known) / rate(planned) / ratio. The lag, growth and what happens while the dough cools are left out, so cold schedules are rough.</remarks>
    public static Computed<Band<double>> Minutes(double minutes, Temperature known, Temperature planned, double yeastRatio, YeastGasModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (!(minutes > 0))
            return new Impossibility("no-time", $"A known schedule of {Figures.Show(minutes)} minutes was given.", "Give the minutes that work at the known temperature, above 0.");
        if (!(yeastRatio > 0) || !double.IsFinite(yeastRatio))
            return new Impossibility("no-yeast", $"The yeast was to be {Figures.Show(yeastRatio)} times the known amount.", "Without yeast nothing rises: give a ratio above 0.");
        if (Alive(model, known, "known") is { } dead)
            return dead;
        if (Alive(model, planned, "planned") is { } doomed)
            return doomed;

        // Both rates belong to the same growth per degree, so the band is over that and not over each rate apart.
        var slow = Time(model.GrowthPerDegree.Low);
        var typical = Time(model.GrowthPerDegree.Typical);
        var fast = Time(model.GrowthPerDegree.High);
        return new Band<double>(Math.Min(slow, Math.Min(typical, fast)), typical, Math.Max(slow, Math.Max(typical, fast)));

        double Time(double growth)
        {
            var one = model with { GrowthPerDegree = new(growth, growth, growth) };
            return minutes * one.RelativeRate(known).Typical / one.RelativeRate(planned).Typical / yeastRatio;
        }
    }

    private static Impossibility? Alive(YeastGasModel model, Temperature temperature, string which) => model.RelativeRate(temperature).Low > 0
        ? null
        : new("yeast-idle", $"At the {which} {Figures.Show(temperature.Celsius, 1)} °C yeast makes no gas.", $"Yeast works between 0 °C and {Figures.Show(model.Death.Celsius, 1)} °C.");
}
