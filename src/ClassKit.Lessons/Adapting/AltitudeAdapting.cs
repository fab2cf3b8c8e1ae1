using System.Globalization;
using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>Changes a lesson's formulas for a high kitchen, where the class asks for it.</summary>
internal static class AltitudeAdapting
{
    private const double FahrenheitPerCelsius = 1.8;

    /// <summary>The lesson with what was changed; unchanged below 3000 ft and where the class wants formulas as written.</summary>
    public static (Lesson Lesson, IReadOnlyList<Adaptation> Changes) Of(Lesson lesson, ClassProfile profile)
    {
        if (!profile.AdjustsForAltitude || profile.AltitudeMetres < AltitudeTable.LowestMetres)
            return (lesson, []);
        List<Adaptation> changes = [];
        var formulas = lesson.Formulas.Select(formula =>
        {
            if (!AltitudeFormula.For(formula.Formula, profile.AltitudeMetres).TryGet(out var changed, out _) || changed.Lines.Count == 0)
                return formula;
            var adjusted = Apply(formula, changed);
            changes.Add(new(adjusted, Words(changed), changed.Table.Source));
            return adjusted;
        }).ToList();
        return (lesson with { Formulas = formulas }, changes);
    }

    private static LessonFormula Apply(LessonFormula formula, AltitudeFormula changed)
    {
        var warmer = changed.OvenWarmer is { } range ? (range.Low + range.High) / 2 / FahrenheitPerCelsius : 0;
        return formula with
        {
            Formula = changed.Adjusted,
            BakeFrom = Warmer(formula.BakeFrom),
            BakeTo = Warmer(formula.BakeTo),
            Steps = [.. formula.Steps.Select(step => step.InOven ? step with { Temperature = Warmer(step.Temperature!.Value) } : step)],
        };

        Temperature Warmer(Temperature oven) => Temperature.FromCelsius(oven.Celsius + warmer);
    }

    private static string Words(AltitudeFormula changed)
    {
        var lines = changed.Lines.Select(line => string.Create(CultureInfo.InvariantCulture, $"{line.Ingredient.Name.ToLowerInvariant()} {line.Before:0.##} % to {line.Chosen:0.##} %"));
        var oven = changed.OvenWarmer is { } range ? string.Create(CultureInfo.InvariantCulture, $", oven {(range.Low + range.High) / 2:0} °F ({(range.Low + range.High) / 2 / FahrenheitPerCelsius:0} °C) hotter") : "";
        return $"Changed for the altitude by the middle of what is published: {string.Join(", ", lines)}{oven}. Bake a trial.";
    }
}
