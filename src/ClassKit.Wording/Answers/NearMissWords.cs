using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What a student is told of a wrong answer that behaves like a formula near the right one: what it looks like, what to write, where to
/// look. An observation: what they thought, nobody knows.
/// </summary>
public static class NearMissWords
{
    /// <summary>The observation, and where to look.</summary>
    /// <param name="miss">What was found.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    /// <param name="formula">The student's formula with its <c>=</c>; null for a typed number, whose student sees no formula and reads of
    /// quantities.</param>
    public static string Of(AnswerFinding.NearMiss miss, Exercise exercise, Part part, string? formula)
    {
        ArgumentNullException.ThrowIfNull(miss);
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(part);
        var told = miss.IsShown
            ? new ShownMiss(miss, exercise, part, formula ?? "", new(exercise, miss.Cells)).Told()
            : TypedNumberWords.Of(miss, exercise, part, new(exercise, NoCells));
        return told is null
            ? UnseenWords.Of(exercise, part, formula, miss.Cells)
            : $"{told.What}.{told.Cure}{SolutionPlace.Of(told.Of, exercise, part, miss.IsShown, isCured: told.Cure.Length > 0)}";
    }

    private static IReadOnlyDictionary<string, string> NoCells { get; } = new Dictionary<string, string>();

    /// <summary>The observation alone, to somebody who reads of those who did it: no cells, what their sheets call them.</summary>
    /// <param name="edits">What they have otherwise than the key.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    /// <param name="formula">What they did, over the exercise's names.</param>
    /// <param name="isOfOthers">False where the words are for those who did it.</param>
    public static string OfMethod(IReadOnlyList<KeyEdit> edits, Exercise exercise, Part part, CellFormula formula, bool isOfOthers = true)
    {
        ArgumentNullException.ThrowIfNull(edits);
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(formula);
        return MethodWords.Of(edits, exercise, part, formula, new(exercise, NoCells, isOfOthers));
    }
}
