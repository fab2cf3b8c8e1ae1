using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>Where in the worked solution somebody finds what is otherwise in their formula: a line or a quantity if just one can be meant, and the whole of it if not.</summary>
internal static class SolutionPlace
{
    /// <summary>A sentence, with a space before it.</summary>
    public static string Of(IReadOnlyList<KeyEdit> edits, Exercise exercise, Part part, SheetTerms sheet) =>
        edits is [var only] && (Step(only, exercise, part) ?? Quantity(only, sheet)) is { } place
            ? $" In the worked solution, see “{place}”."
            : " Compare it with the worked solution of this part.";

    private static string? Step(KeyEdit edit, Exercise exercise, Part part)
    {
        if (edit.Right == part.Key.ToString()[1..]) return null;
        var steps = exercise.Steps.Where(step => new FormulaShape(step.Key.ToString()).Holds(edit.Right)).ToList();
        return steps is [var only] ? only.What : null;
    }

    /// <summary>A name of one word (water, salt) may stand in every line: it leads nowhere.</summary>
    private static string? Quantity(KeyEdit edit, SheetTerms sheet)
    {
        var missing = edit switch { KeyEdit.OtherCell => edit.Right, KeyEdit.OtherUnit => edit.Right, KeyEdit.LeftOut left => left.Term, _ => null };
        return missing is not null && CellFormula.Of("=" + missing).Names is [var name] && sheet.InSolution(name) is { } called && called.Contains(' ', StringComparison.Ordinal) ? called : null;
    }
}
