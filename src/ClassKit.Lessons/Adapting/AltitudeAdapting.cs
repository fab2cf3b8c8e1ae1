using System.Globalization;
using ClassKit.Baking.Altitude;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Adapting;

/// <summary>Changes a lesson's formulas for a high kitchen, where the class asks for it.</summary>
internal static class AltitudeAdapting
{
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

    /// <summary>The oven stays as written: one thing is changed at a time, and the leavening first.</summary>
    private static LessonFormula Apply(LessonFormula formula, AltitudeFormula changed) => formula with { Formula = changed.Adjusted };

    private static string Words(AltitudeFormula changed)
    {
        var lines = changed.Lines.Where(line => line.Chosen != line.Before).Select(line => string.Create(CultureInfo.InvariantCulture, $"{line.Ingredient.Name.ToLowerInvariant()} {line.Before:0.##} % to {line.Chosen:0.##} %"));
        return $"Changed for the altitude by the smallest published change of the leavening alone: {string.Join(", ", lines)}. All else and the oven stay as written. Bake a trial, and change one thing at a time.";
    }
}
