using System.Globalization;
using ClassKit.Baking.Altitude;
using ClassKit.Baking.Cooking;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Adapting;

/// <summary>
/// Changes a lesson's formulas for a high kitchen, where the class asks for it, and says on each card what its heat asks for there.
/// </summary>
internal static class AltitudeAdapting
{
    /// <summary>
    /// The lesson with what was changed or is to be minded; unchanged below 3000 ft, and its formulas and fat where the class wants them as
    /// written.
    /// </summary>
    public static (Lesson Lesson, IReadOnlyList<Adaptation> Changes) Of(Lesson lesson, ClassProfile profile)
    {
        if (profile.AltitudeMetres < AltitudeTable.LowestMetres)
            return (lesson, []);
        List<Adaptation> changes = [];
        var formulas = lesson
            .Formulas.Select(formula =>
            {
                if (!formula.AtAltitude(profile.AltitudeMetres).TryGet(out var changed, out _))
                    return formula;
                var adjusted = profile.AdjustsForAltitude ? Apply(formula, changed, profile.AltitudeMetres) : formula;
                if (profile.AdjustsForAltitude && changed.Lines.Count > 0)
                    changes.Add(new(adjusted, Words(changed), changed.Table.Source));
                changes.AddRange(
                    changed
                        .Advice.Where(advice => advice.Code is HighCooking.CoolerFat or HighCooking.CoolerSteam)
                        .Select(advice => new Adaptation(
                            adjusted,
                            Told(advice.Message, advice.Code, profile.AdjustsForAltitude),
                            advice.Source
                        ))
                );
                return adjusted;
            })
            .ToList();
        return (lesson with { Formulas = formulas }, changes);
    }

    /// <summary>
    /// The oven stays as written: one thing is changed at a time, and the leavening first. Of what is fried the fat is that one thing.
    /// </summary>
    private static LessonFormula Apply(LessonFormula formula, AltitudeFormula changed, double metres) =>
        formula with
        {
            Formula = changed.Adjusted,
            Steps =
            [
                .. formula.Steps.Select(step =>
                    step.IsBaking && step.Way == CookingWay.Fryer
                        ? step with
                        {
                            Temperature = step.Temperature is { } fat ? HighCooking.FatAt(fat, metres) : null,
                        }
                        : step
                ),
            ],
            BakeFrom =
                formula.Cooking.FirstOrDefault(step => step.IsBaking)?.Way == CookingWay.Fryer
                    ? HighCooking.FatAt(formula.BakeFrom, metres)
                    : formula.BakeFrom,
            BakeTo =
                formula.Cooking.LastOrDefault(step => step.IsBaking)?.Way == CookingWay.Fryer
                    ? HighCooking.FatAt(formula.BakeTo, metres)
                    : formula.BakeTo,
        };

    private static string Told(string message, string code, bool isAdjusted) =>
        code != HighCooking.CoolerFat ? message
        : isAdjusted ? $"Changed for the altitude. {message}"
        : $"Written for sea level. {message}";

    private static string Words(AltitudeFormula changed)
    {
        var lines = changed
            .Lines.Where(line => line.Chosen != line.Before)
            .Select(line =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{line.Ingredient.Name.ToLowerInvariant()} {line.Before:0.##} % to {line.Chosen:0.##} %"
                )
            );
        return $"Changed for the altitude by the smallest published change of the leavening alone: {string.Join(", ", lines)}. All else and the oven stay as written. Bake a trial, and change one thing at a time.";
    }
}
