using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Content.Lessons;

/// <summary>Notes a step that is named like mixing behind a rise, where gas has been counted for a while: see <see cref="MixingStep"/>.</summary>
internal static class MixingBehindRises
{
    /// <param name="method">Where the steps stand.</param>
    /// <param name="formula">What was read.</param>
    /// <param name="problems">Where to note what is doubtful.</param>
    public static void Check(Section? method, LessonFormula formula, ProblemList problems)
    {
        foreach (var step in MixingStep.NotTaken(formula))
            problems.Doubt(
                method?.Line,
                $"`{step.Name}` is named like mixing and stands behind a rise: gas is counted from before that rise on",
                "If the dough is only mixed there, as behind a preferment, write `mixes` into its brackets; else give it another name, such as `Stretch and fold`."
            );
    }
}
