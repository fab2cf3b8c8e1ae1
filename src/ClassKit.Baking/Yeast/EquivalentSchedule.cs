using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Yeast;

/// <summary>Fermentations that make the same gas: less yeast and longer, warmer and shorter, overnight in the cold.</summary>
public static class EquivalentSchedule
{
    private const double MostMinutes = 60 * 24 * 60;
    private const double LeastRatio = 0.001;
    private const double MostRatio = 1000;

    /// <summary>The minutes that make as much gas as a known schedule does.</summary>
    /// <param name="minutes">Of the known schedule, above 0.</param>
    /// <param name="known">Its dough temperature.</param>
    /// <param name="planned">The dough temperature planned.</param>
    /// <param name="yeastRatio">The yeast planned over the yeast known; 0.001 to 1000.</param>
    /// <param name="model">The yeast's response to temperature.</param>
    /// <remarks>
    /// minutes × rate(known) / rate(planned) / ratio. The lag, growth and what happens while the dough cools are left out, so cold
    /// schedules are rough.
    /// </remarks>
    public static Computed<Band<double>> Minutes(
        double minutes,
        Temperature known,
        Temperature planned,
        double yeastRatio,
        YeastGasModel model
    )
    {
        ArgumentNullException.ThrowIfNull(model);
        if (WhatIsWrong(minutes, known, planned, model) is { } odd)
            return odd;
        if (!(yeastRatio is >= LeastRatio and <= MostRatio))
            return new Impossibility(
                "no-yeast",
                $"The yeast was to be {Figures.Exact(yeastRatio)} times the known amount.",
                $"Without yeast nothing rises: give a ratio from {Figures.Exact(LeastRatio)} to {Figures.Exact(MostRatio)}."
            );
        return Explained(
            "Equivalent time",
            model,
            "minutes",
            "known minutes × rate known / rate planned / yeast ratio",
            growth => minutes * Ratio(model, known, planned, growth) / yeastRatio,
            "min",
            (before, after) => $"{Figures.Exact(minutes)} min × {before} / {after} / {Figures.Exact(yeastRatio, 4)}",
            known,
            planned
        );
    }

    /// <summary>How much yeast, of the known amount, makes the same gas in another time: overnight in the cold, or quickly.</summary>
    /// <param name="minutes">Of the known schedule, above 0.</param>
    /// <param name="known">Its dough temperature.</param>
    /// <param name="plannedMinutes">The time planned, above 0.</param>
    /// <param name="planned">The dough temperature planned.</param>
    /// <param name="model">The yeast's response to temperature.</param>
    /// <remarks>minutes × rate(known) / (planned minutes × rate(planned)), the same equation the other way about.</remarks>
    public static Computed<Band<double>> YeastRatio(
        double minutes,
        Temperature known,
        double plannedMinutes,
        Temperature planned,
        YeastGasModel model
    )
    {
        ArgumentNullException.ThrowIfNull(model);
        if ((WhatIsWrong(minutes, known, planned, model) ?? WhatIsWrong(plannedMinutes, known, planned, model)) is { } odd)
            return odd;
        return Explained(
            "Equivalent yeast",
            model,
            "yeast, of the known amount",
            "known minutes × rate known / (planned minutes × rate planned)",
            growth => minutes * Ratio(model, known, planned, growth) / plannedMinutes,
            "",
            (before, after) => $"{Figures.Exact(minutes)} min × {before} / ({Figures.Exact(plannedMinutes)} min × {after})",
            known,
            planned
        );
    }

    private static Computed<Band<double>> Explained(
        string title,
        YeastGasModel model,
        string quantity,
        string formula,
        Func<double, double> of,
        string unit,
        Func<string, string, string> numbers,
        Temperature known,
        Temperature planned
    )
    {
        // Both rates belong to the same growth per degree, so the band is over that and not over each rate apart.
        var slow = of(model.GrowthPerDegree.Low);
        var typical = of(model.GrowthPerDegree.Typical);
        var fast = of(model.GrowthPerDegree.High);
        Band<double> band = new(Math.Min(slow, Math.Min(typical, fast)), typical, Math.Max(slow, Math.Max(typical, fast)));
        var before = Figures.Show(model.RelativeRate(known).Typical);
        var after = Figures.Show(model.RelativeRate(planned).Typical);
        return new Explanation(
            title,
            [
                ExplainedStep.Given(
                    "rate known",
                    $"of yeast at {Figures.Celsius(known)}, over that at {Figures.Celsius(model.Reference)}",
                    before
                ),
                ExplainedStep.Given(
                    "rate planned",
                    $"of yeast at {Figures.Celsius(planned)}, over that at {Figures.Celsius(model.Reference)}",
                    after
                ),
                new(quantity, formula, numbers(before, after), unit.Length > 0 ? $"{Figures.Show(typical)} {unit}" : Figures.Show(typical)),
            ],
            $"Typical: {Figures.Percent(model.GrowthPerDegree.Typical - 1)} a degree. With {Figures.Percent(model.GrowthPerDegree.Low - 1)} to {Figures.Percent(model.GrowthPerDegree.High - 1)} it is {Figures.Show(band.Low)} to {Figures.Show(band.High)}{(unit.Length > 0 ? " " + unit : "")}."
        ).For(band);
    }

    private static double Ratio(YeastGasModel model, Temperature known, Temperature planned, double growth)
    {
        var one = model with { GrowthPerDegree = new(growth, growth, growth) };
        return one.RelativeRate(known).Typical / one.RelativeRate(planned).Typical;
    }

    private static Impossibility? WhatIsWrong(double minutes, Temperature known, Temperature planned, YeastGasModel model) =>
        minutes is > 0.01 and <= MostMinutes
            ? Alive(model, known, "known") ?? Alive(model, planned, "planned")
            : new(
                "no-time",
                $"A schedule of {Figures.Exact(minutes)} minutes was given.",
                $"Give the minutes that work, above 0 and at most {Figures.Exact(MostMinutes, 0)}."
            );

    /// <summary>Below this share of its rate at the reference yeast is called idle: minutes become months.</summary>
    private const double IdleRate = 0.001;

    private static Impossibility? Alive(YeastGasModel model, Temperature temperature, string which) =>
        model.RelativeRate(temperature).Low > IdleRate
            ? null
            : new(
                "yeast-idle",
                $"At the {which} {Figures.Exact(temperature.Celsius, 1)} °C yeast makes no gas.",
                $"Yeast works between 0 °C and {Figures.Exact(model.Death.Celsius, 1)} °C."
            );
}
