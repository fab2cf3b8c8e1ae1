using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;

namespace ClassKit.Pages.Numbers;

/// <summary>When a bread is cut, in words.</summary>
internal static class CuttingText
{
    /// <summary>"cut", or "cut 24 h after baking" where the class is over by then.</summary>
    public static string Of(LessonFormula bread) => bread.CutAfterMinutes is { } minutes ? $"cut {Rest(minutes)} after baking" : "cut";

    /// <summary>"Not cut before 24 h after baking: it is tasted another day."; empty of a bread that is cut in class.</summary>
    public static string Note(LessonFormula bread) =>
        bread.CutAfterMinutes is { } minutes
            ? $"Not cut before {Rest(minutes)} after baking: weigh and measure it whole, and taste it another day."
            : "";

    /// <summary>The same of all breads of a class; empty where all are cut in class.</summary>
    public static string Note(ComputedPack pack) =>
        (pack.CutAnotherDay.Count, pack.Lesson.Formulas.Count) switch
        {
            (0, _) => "",
            var (later, all) when later == all =>
                $"Nothing is cut in class: taste when it has rested, {Phrases.List([.. pack.CutAnotherDay.Select(Rested)])}.",
            _ => $"Not among the samples, since it is cut another day: {Phrases.List([.. pack.CutAnotherDay.Select(Rested)])}.",
        };

    private static string Rested(LessonFormula bread) =>
        $"{bread.Formula.Title.ToLowerInvariant()} from {Rest(bread.CutAfterMinutes!.Value)} after baking";

    private static string Rest(int minutes) => NumberText.WithUnit(NumberText.AtMost(minutes / 60.0, 1), "h");
}
