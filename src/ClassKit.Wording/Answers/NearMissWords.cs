using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>What a student is told of a wrong answer that behaves like a formula near the right one. It is an observation: what they thought, nobody knows.</summary>
public static class NearMissWords
{
    /// <summary>The observation, and where to look.</summary>
    public static string Of(AnswerFinding.NearMiss miss, Exercise exercise, Part part)
    {
        ArgumentNullException.ThrowIfNull(miss);
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(part);
        var sheet = new SheetTerms(exercise, miss.Cells);
        return $"{(miss.IsShown ? "It" : "Going by the number alone, it")} looks as if {Observation(miss, part, sheet)}.{Place(miss.Edits[0], exercise, part, sheet)}";
    }

    /// <summary>The observation alone, for a group of answers: no cells, what their sheets call them.</summary>
    public static string OfMethod(IReadOnlyList<KeyEdit> edits, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(edits);
        var sheet = new SheetTerms(exercise, new Dictionary<string, string>());
        return string.Join("; and ", edits.Select(edit => EditWords.What(edit, sheet)));
    }

    private static string Observation(AnswerFinding.NearMiss miss, Part part, SheetTerms sheet)
    {
        if (miss.Edits is [var one]) return EditWords.SaysAll(one) ? EditWords.What(one, sheet) : $"{EditWords.What(one, sheet)}: {Instead(miss.Edits, one.Written, one.Right, sheet)}";
        var what = string.Join("; and ", miss.Edits.Select(edit => EditWords.What(edit, sheet)));
        return $"two things happened: {what}. Together that is {Instead(miss.Edits, miss.Formula[1..], part.Key.ToString()[1..], sheet)}";
    }

    private static string Instead(IReadOnlyList<KeyEdit> edits, string written, string right, SheetTerms sheet) =>
        $"{sheet.Cells(written)} where {sheet.Cells(right)} belongs{sheet.Legend([.. edits.SelectMany(EditWords.Named)], right, written)}";

    /// <summary>The line of the worked solution in which the edited place stands: its step, or the quantity that it is about.</summary>
    private static string Place(KeyEdit edit, Exercise exercise, Part part, SheetTerms sheet)
    {
        if (exercise.Steps.LastOrDefault(step => CellFormula.OfTree(step.Key.Shape).ToString().Contains(edit.Right, StringComparison.OrdinalIgnoreCase)) is { } step)
            return $" In the worked solution, see “{step.What}”.";
        var name = edit.Right == part.Key.ToString()[1..] ? null : CellFormula.Of("=" + edit.Right).Names.Select(sheet.InSolution).LastOrDefault(name => name is not null);
        return name is null ? " Hold it against this part's worked solution." : $" In the worked solution, look for “{name}”.";
    }
}
