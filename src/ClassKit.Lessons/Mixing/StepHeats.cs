using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Mixing;

/// <summary>What each step of a method warms, as the bench plan knows it.</summary>
internal static class StepHeats
{
    /// <summary>
    /// One list for each step; all empty where no balance can be worked out, which the cards then say. What is cooked to a paste or boiled is the
    /// step itself, and nothing that it brings along.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<StepHeat>> Of(LessonFormula formula, Temperature kitchen, MixSettings settings)
    {
        var parts = MixBalance.Of(formula, kitchen, settings).TryGet(out var mix, out _) ? mix.Parts : [];
        return
        [
            .. formula.Steps.Select(step =>
                (IReadOnlyList<StepHeat>)
                    [
                        .. step
                            .Work.Heats.Where(heat => heat.Kind is not (HeatKind.Cooked or HeatKind.Boiled))
                            .SelectMany(heat =>
                                parts.Where(part => part.Ingredient.Id == heat.Ingredient.Id && part.Kind == heat.Kind).Take(1)
                            )
                            .Select(part =>
                                Heat(part) with
                                {
                                    InWarmWater = part.Kind == HeatKind.Warmed && !TapWater.Is(part.Ingredient) && !IsOnBurner(step),
                                    IsDrawn = TapWater.Is(part.Ingredient),
                                }
                            ),
                    ]
            ),
        ];

        StepHeat Heat(MixPart part) =>
            new(part.Ingredient.Name.ToLowerInvariant(), part.Temperature, part.Kind == HeatKind.Tempered ? settings.TemperMinutes : 0);

        // A pan that melts something has its burner to itself: what is warmed besides stands in warm water.
        static bool IsOnBurner(MethodStep step) =>
            step.Work.Uses.Any(use => use.Kind == EquipmentKind.Burner) && step.Work.Heats.All(heat => heat.Kind != HeatKind.Melted);
    }
}
