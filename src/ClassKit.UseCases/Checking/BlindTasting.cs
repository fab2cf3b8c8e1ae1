using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Sensory;

namespace ClassKit.UseCases.Checking;

/// <summary>A tasting that is too short for the blind part of it: sheets are printed, and no plan has minutes for them.</summary>
internal static class BlindTasting
{
    /// <summary>What to write for it; null where there is time, or where the lesson keeps none for tasting.</summary>
    /// <param name="path">The lesson's file.</param>
    /// <param name="lesson">The lesson, as written.</param>
    public static Diagnostic? Of(string path, Lesson lesson)
    {
        var minutes = lesson.SetAside.TastingMinutes;
        var samples = lesson.Formulas.Count(bread => bread.CutAfterMinutes is null && bread.Place is not { IsAsWritten: false });
        if (minutes == 0 || samples == 0 || TastingCourse.Of(0, minutes).DoesFor(samples))
            return null;
        var least = TastingCourse.LeastFor(samples);
        return new(
            path,
            null,
            minutes < TastingCourse.LeastMinutes
                ? $"In {minutes} min nobody tastes blind, and the tasting sheets are printed all the same"
                : $"Of the {minutes} min for tasting {TastingCourse.Of(0, minutes).BlindMinutes} are for tasting blind, which is short for {samples} samples and the triangle",
            $"Write `tasting: {least} min`, which has two minutes for each, or leave the sheets out."
        )
        {
            Weight = Weight.Noted,
        };
    }
}
