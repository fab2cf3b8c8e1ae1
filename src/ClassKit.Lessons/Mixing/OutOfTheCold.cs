using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Mixing;

/// <summary>How long what comes out of the refrigerator may take to the end of baking.</summary>
internal static class OutOfTheCold
{
    /// <summary>
    /// Minutes from the beginning of a step to the end of baking at the most, less what has stood out before it; null after the oven, or
    /// where nothing of the bread is kept cold.
    /// </summary>
    /// <remarks>
    /// Time as a control: see <see cref="TimeControl"/>. Said of every step before the oven, so that it holds for what is left when the
    /// first are done the day before. What stands may be taken out earlier by a demonstration that is in the way.
    /// </remarks>
    public static int? MinutesLeft(
        LessonFormula formula,
        int at,
        IReadOnlyList<IReadOnlyList<StepHeat>> heats,
        ClassProfile profile,
        int longestDemonstration
    )
    {
        if (formula.Steps.Take(at + 1).Any(step => step.IsCooking) || !formula.Formula.Lines.Any(line => line.Ingredient.IsKeptCold()))
            return null;
        var refrigerator = profile.Refrigerator;
        double[] places =
        [
            profile.KitchenTemperature.Celsius,
            refrigerator.Celsius,
            .. heats.SelectMany(heat => heat).Select(heat => heat.To.Celsius),
            .. formula.Steps.Where(step => !step.IsCooking).Select(step => step.Temperature?.Celsius ?? 0),
        ];
        // A tin of 220 °C warms no dough to 220 °C; what stands by it has no more than the four hours.
        var warmest = Temperature.FromCelsius(Math.Min(places.Max(), Boiling));
        if (!TimeControl.MinutesUntilDiscarded(refrigerator, warmest).TryGet(out var minutes, out var why))
        {
            if (why.Code == "under-control")
                return null;
            // What cannot be computed is no leave to stand for ever.
            minutes = FourHours;
        }
        return (int)minutes
            - heats[at]
                .Where(heat => heat.StandsMinutes > 0)
                .Select(heat => heat.StandsMinutes + longestDemonstration)
                .DefaultIfEmpty()
                .Max();
    }

    /// <summary>The warmest that food with water in it gets, in degrees Celsius.</summary>
    private const double Boiling = 100;

    /// <summary>The shorter of the two limits of FDA Food Code 3-501.19, in minutes.</summary>
    private const double FourHours = 240;
}
