using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.FoodSafety;

/// <summary>Keeping food by the clock instead of by its temperature: batter on the bench, custard on a table.</summary>
/// <remarks>
/// FDA Food Code 3-501.19, as adopted in Wisconsin (ATCP 75) and Minnesota (4626.0408): 4 hours after leaving control, cold or hot
/// (3-501.19(B)(1): 5 °C or below, or 57 °C or above, when removed from control); or 6 hours if it was at 41 °F (5 °C) or below to begin with and never above 70 °F (21 °C). Batter mixed at room temperature was never under control; for it
/// too 4 hours are all there are (3-501.14(B)).
/// </remarks>
public static class TimeControl
{
    /// <summary>The minutes after which food without temperature control is discarded.</summary>
    /// <param name="start">Its temperature when it left control.</param>
    /// <param name="warmest">The warmest that it gets.</param>
    /// <param name="rule">Where hot and cold begin; the Food Code's if not said.</param>
    public static Computed<double> MinutesUntilDiscarded(Temperature start, Temperature warmest, HoldingRule? rule = null)
    {
        rule ??= HoldingRule.FoodCode;
        if ((Sanity.Temperature(start, -40, 120, "Start") ?? Sanity.Temperature(warmest, -40, 120, "Warmest")) is { } odd)
            return odd;
        if (warmest.Celsius < start.Celsius)
            return new Impossibility(
                "warmest-below-start",
                $"The warmest, {Figures.Celsius(warmest)}, is below the start, {Figures.Celsius(start)}.",
                "Give the warmest that the food gets, the start too."
            );
        if (warmest.Celsius <= rule.Cold.Celsius)
            return new Impossibility(
                "under-control",
                "The food is cold enough to be kept by its temperature.",
                "No clock is needed while it stays so."
            );
        var cold = start.Celsius <= rule.Cold.Celsius + Slack && warmest.Celsius <= Temperature.FromFahrenheit(70).Celsius + Slack;
        var hot = start.Celsius >= rule.Hot.Celsius - Slack;
        var hours = cold ? 6 : 4;
        return Explanation
            .Of(
                "Time as a control",
                "discard after",
                cold ? "6 h: cold to begin with and never above 21 °C"
                    : hot ? "4 h: from when it left the heat"
                    : "4 h",
                $"{hours} h",
                $"{hours * 60} min",
                $"FDA Food Code 3-501.19, with cold and hot by the {rule.Name}. Local rules come first."
            )
            .For(hours * 60.0);
    }

    /// <summary>For 41 °F and 70 °F typed in Celsius with one decimal.</summary>
    private const double Slack = 0.06;
}
