using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Solutions;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>
/// Where in the worked solution somebody finds what is otherwise: a line of this part if just one can be meant, and else the whole of it,
/// where nothing says already what to do. A quantity that was just named leads nowhere.
/// </summary>
internal static class SolutionPlace
{
    /// <summary>A sentence, with a space before it; empty where there is nothing to add.</summary>
    /// <param name="edits">What is otherwise.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    /// <param name="isFormula">False for a typed number.</param>
    /// <param name="isCured">True if it was said what to write or do.</param>
    public static string Of(IReadOnlyList<KeyEdit> edits, Exercise exercise, Part part, bool isFormula, bool isCured) =>
        edits is [var only] && Step(only, exercise, part) is { } place ? $" In the worked solution, see “{place}”."
        : isCured ? ""
        : $" Compare your {(isFormula ? "formula" : "steps")} with the worked solution of this part.";

    private static string? Step(KeyEdit edit, Exercise exercise, Part part)
    {
        if (edit.Right == part.Key.ToString()[1..])
            return null;
        var steps = WorkedSolution.StepsTo(exercise, part).Where(step => new FormulaShape(step.Key.ToString()).Holds(edit.Right)).ToList();
        return steps is [var only] ? only.What : null;
    }
}
