using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.NamedFoods;

namespace ClassKit.Lessons.Mixing;

/// <summary>How long what comes out of the refrigerator may take to the end of baking, or behind it to the tasting.</summary>
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

    /// <summary>
    /// Minutes from the beginning of a step behind the last cooking to the beginning of the tasting at the most, where the step names what
    /// is kept cold: a cream that is filled in, an icing, milk poured over. What is left of it goes when the tasting ends. Null for any other
    /// step.
    /// </summary>
    /// <remarks>A crust brushed with butter or another fat has no such limit (common practice, no source).</remarks>
    public static int? MinutesUntilTasted(LessonFormula formula, int at, ClassProfile profile, int tastingMinutes)
    {
        var last = formula.Steps.ToList().FindLastIndex(step => step.IsCooking);
        if (last < 0 || at <= last || !NamesColdFood(formula, at, profile))
            return null;
        var refrigerator = profile.Refrigerator;
        var warmest = Temperature.FromCelsius(Math.Max(profile.KitchenTemperature.Celsius, refrigerator.Celsius));
        return TimeControl.MinutesUntilDiscarded(refrigerator, warmest).TryGet(out var minutes, out var why) ? (int)minutes - tastingMinutes
            : why.Code == "under-control" ? null
            : (int)FourHours - tastingMinutes;
    }

    private static bool NamesColdFood(LessonFormula formula, int at, ClassProfile profile)
    {
        var cold = formula
            .Ingredients.Where(ingredient => ingredient.IsKeptCold() && ingredient.Role != IngredientRole.Fat)
            .Select(ingredient => ingredient.Id)
            .ToHashSet();
        return cold.Count > 0
            && FoodMentions
                .In(formula.Steps[at].Text.Written, [formula.Formula.Title], profile.Pantry)
                .Any(food => food.MayBeMade || food.CanBe.Any(ingredient => cold.Contains(ingredient.Id)));
    }

    /// <summary>The warmest that food with water in it gets, in degrees Celsius.</summary>
    private const double Boiling = 100;

    /// <summary>The shorter of the two limits of FDA Food Code 3-501.19, in minutes.</summary>
    private const double FourHours = 240;
}
