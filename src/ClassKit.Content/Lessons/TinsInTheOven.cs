using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>
/// Doubts a bread for which a team has several tins, and whose method takes one place in the oven because it says nothing of places.
/// </summary>
internal static class TinsInTheOven
{
    public static void Check(Section? method, LessonFormula formula, ProblemList problems)
    {
        if (
            method is null
            || formula.Tins < 2
            || !formula.Steps.Any(step => step.InOven)
            || formula.Steps.Any(step => step.Work.StatesOvenPlaces)
        )
            return;
        problems.Doubt(
            method.Line,
            $"A team has {formula.Tins} tins or trays for it, and the method takes one place in the oven",
            $"Write into the brackets of the step in the oven how many places they take: `{formula.Tins} oven places`, or `1 oven place` where they stand in one."
        );
    }
}
