using System.Text.RegularExpressions;
using ClassKit.Baking.Cooking;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;
using ClassKit.Lessons.Words;

namespace ClassKit.Lessons.Packs;

/// <summary>Reads a method as the stages in which gas is made.</summary>
internal static class BakeStages
{
    /// <summary>A step at 100 °C or more is in the oven; no dough stands that hot on a bench.</summary>
    private const double OvenCelsius = 100;

    /// <summary>
    /// From the end of the last mixing before the oven, or whatever cooks it, to the end of baking. What is as hot as steam or boiling
    /// water is at the boiling point. A bench step without a temperature is at that of the dough as it comes to it, and one in which
    /// nobody has a hand lets it come toward the room's. Frozen, a dough makes no gas; what is reheated has risen before.
    /// </summary>
    public static IReadOnlyList<BakeStage> Of(LessonFormula formula, BenchPlace place, Temperature boiling)
    {
        var steps = formula.Steps;
        var oven = Enumerable.Range(0, steps.Count).Where(at => InOven(steps[at])).ToArray();
        var door = oven.Length > 0 ? oven[0] : steps.Count;
        var mixed = MixingStep.Of(formula, door);
        return
        [
            .. OnBench(formula, [.. steps.Take(door).Skip(mixed + 1).Where(step => !step.IsFreezing)], place),
            .. oven.Select(at => Stage(steps[at], steps[at].Temperature ?? boiling, true)),
        ];
    }

    private static IEnumerable<BakeStage> OnBench(LessonFormula formula, IReadOnlyList<MethodStep> steps, BenchPlace place)
    {
        var (dough, lump) = (place.Mixed, place.Batch);
        foreach (var step in steps)
        {
            if (Dividing.IsMatch(step.Name))
                lump = formula.PieceMass;
            if (step is not { Temperature: null, Work.People: 0 })
            {
                // What comes out of a proofer or a refrigerator is as warm as it was in there.
                dough = step.Temperature ?? dough;
                yield return Stage(step, dough, false);
                continue;
            }
            var warming = RoomWarming.Of(formula.Dried, lump, dough, place.Kitchen);
            var minutes = Minutes(step.Each ?? new(step.MinMinutes, step.MaxMinutes)).Typical;
            yield return Stage(step, warming.Mean(minutes), false) with
            {
                Warming = warming,
            };
            dough = warming.After(minutes);
        }
    }

    /// <summary>From here on there are pieces and no bowl, by the words that bakers use; what is taken from its tin is not among them.</summary>
    private static readonly Regex Dividing = WordForms.Of(
        "shape",
        "preshape",
        "mould",
        "mold",
        "divide",
        "portion",
        "fill",
        "scoop",
        "pipe",
        "cut"
    );

    private static bool InOven(MethodStep step) => step.IsBaking || !step.IsCooking && step.Temperature is { Celsius: >= OvenCelsius };

    private static BakeStage Stage(MethodStep step, Temperature temperature, bool inOven) =>
        new(
            step.Name,
            Minutes(step.Each ?? new(step.MinMinutes, step.MaxMinutes)),
            temperature,
            inOven,
            !inOven && Degassing.IsMatch(step.Name)
        )
        {
            Way = step.Way ?? CookingWay.Oven,
        };

    /// <summary>What happens in a piece happens in its own time and not in that of the batch.</summary>
    private static Band<double> Minutes(PieceTime time) => new(time.MinMinutes, (time.MinMinutes + time.MaxMinutes) / 2.0, time.MaxMinutes);

    /// <summary>Steps that press the gas out, by the words that bakers use for them.</summary>
    private static readonly Regex Degassing = WordForms.Of(
        "stir down",
        "punch",
        "knock",
        "degas",
        "shape",
        "preshape",
        "mould",
        "mold",
        "roll out",
        "divide"
    );
}
