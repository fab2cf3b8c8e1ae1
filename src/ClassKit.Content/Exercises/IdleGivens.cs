using ClassKit.CellFormulas.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>
/// Notes givens that nothing is computed with: those that stand in the table and nowhere else are most likely left over, those that the
/// problem tells of may be meant to be seen through.
/// </summary>
internal static class IdleGivens
{
    public static void Note(
        IReadOnlyList<Given> givens,
        string markdown,
        IReadOnlyList<CellFormula> rules,
        IReadOnlyList<Part> parts,
        IReadOnlyList<WorkingStep> steps,
        ExercisePlaces places,
        ProblemList problems
    )
    {
        var used = rules
            .Concat(parts.Select(part => part.Key))
            .Concat(steps.Select(step => step.Key))
            .SelectMany(formula => formula.Names)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var given in givens.Where(given => !used.Contains(given.Id)))
        {
            var line = places.LineOf(new(Given: given.Id));
            var isTold = markdown.Contains($"{{{given.Id}}}", StringComparison.Ordinal);
            // What is chosen among causes has numbers for its story alone.
            if (isTold && !parts.Any(part => part.IsNumber))
                continue;
            if (isTold)
                problems.Doubt(
                    line,
                    $"Nothing is computed with the given `{given.Id}`, and students are dealt it",
                    "Nothing need be done if they are to find out that it does not matter; else take it out.",
                    Weight.Noted
                );
            else
                problems.Doubt(
                    line,
                    $"The given `{given.Id}` is in no text and in no key",
                    $"Write `{{{given.Id}}}` into the problem, use it in a key, or take its row out."
                );
        }
    }
}
