using ClassKit.CellFormulas.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>Notes givens that stand in the table and nowhere else: nobody is told of them in words, and nothing is computed with them.</summary>
internal static class IdleGivens
{
    public static void Note(
        IReadOnlyList<Given> givens, string markdown, IReadOnlyList<CellFormula> rules, IReadOnlyList<Part> parts, IReadOnlyList<WorkingStep> steps, ExercisePlaces places, ProblemList problems)
    {
        var used = rules.Concat(parts.Select(part => part.Key)).Concat(steps.Select(step => step.Key)).SelectMany(formula => formula.Names).ToHashSet(StringComparer.Ordinal);
        foreach (var given in givens.Where(given => !used.Contains(given.Id) && !markdown.Contains($"{{{given.Id}}}", StringComparison.Ordinal)))
            problems.Doubt(places.LineOf(new(Given: given.Id)), $"The given `{given.Id}` is in no text and in no key", $"Write `{{{given.Id}}}` into the problem, use it in a key, or take its row out.");
    }
}
