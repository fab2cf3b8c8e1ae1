using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>What a student is told of a wrong answer that behaves like a formula near the right one: what it looks like, what to write, where to look. An observation: what they thought, nobody knows.</summary>
public static class NearMissWords
{
    /// <summary>The observation, and where to look.</summary>
    /// <param name="miss">What was found.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    /// <param name="formula">The student's formula with its <c>=</c>; null for a typed number, whose student sees no formula and reads of quantities.</param>
    public static string Of(AnswerFinding.NearMiss miss, Exercise exercise, Part part, string? formula)
    {
        ArgumentNullException.ThrowIfNull(miss);
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(part);
        var sheet = new SheetTerms(exercise, miss.Cells);
        var seen = miss.IsShown ? Shown(miss, part, new(formula), sheet) : $"From your number, it looks as if {OfMethod(miss.Edits, exercise)}.";
        return seen + SolutionPlace.Of(miss.Edits, exercise, part, sheet);
    }

    /// <summary>The observation alone, for a typed number or a group of answers: no cells, what their sheets call them.</summary>
    public static string OfMethod(IReadOnlyList<KeyEdit> edits, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(edits);
        var sheet = new SheetTerms(exercise, new Dictionary<string, string>());
        return string.Join("; and ", edits.Select(edit => EditWords.What(edit, sheet)));
    }

    private static string Shown(AnswerFinding.NearMiss miss, Part part, FormulaShape formula, SheetTerms sheet)
    {
        var brackets = new KeyEdit.OtherBrackets(part.Key.ToString()[1..], miss.Formula[1..]);
        if (formula.DiffersInBracketsAloneFrom(sheet.Cells(brackets.Right))) return $"It looks as if {EditWords.What(brackets, sheet)}.{EditCures.Of(brackets, formula, sheet)}";
        if (!miss.Edits.All(edit => IsSeen(edit, formula, sheet))) return $"Your formula comes to the same as {sheet.Cells(miss.Formula[1..])}, which is one step or two from the right one.";
        if (miss.Edits is not [var one]) return $"It looks as if two things happened: {string.Join("; and ", miss.Edits.Select(edit => EditWords.What(edit, sheet)))}.";
        return Missing(one, miss, part, sheet) is { } missing
            ? $"It looks as if {missing}."
            : $"It looks as if {EditWords.What(one, sheet)}.{(one is KeyEdit.OtherCell other ? Spot(other, miss, part, formula, sheet) : EditCures.Of(one, formula, sheet))}";
    }

    /// <summary>True if what is said of an edit is seen in the formula: one of equal value may be written quite otherwise.</summary>
    private static bool IsSeen(KeyEdit edit, FormulaShape formula, SheetTerms sheet) => edit is KeyEdit.LeftOut or KeyEdit.TakenIn or KeyEdit.CountedTwice or KeyEdit.ShareForRest or KeyEdit.ShareOfOtherEnd or KeyEdit.Inverse or KeyEdit.OtherSign or KeyEdit.OtherRounding
        || formula.Holds(sheet.Cells(edit.Written));

    /// <summary>A cell that stands twice while another does not stand at all: the one that is missing is what is to be seen.</summary>
    private static string? Missing(KeyEdit edit, AnswerFinding.NearMiss miss, Part part, SheetTerms sheet) =>
        edit is KeyEdit.OtherCell && Times(miss.Formula, edit.Right) == 0 && Times(miss.Formula, edit.Written) == 2 && Times(part.Key.ToString(), edit.Written) == 1
            ? $"{sheet.Term(edit.Written)} stands twice, and {sheet.Term(edit.Right)} is missing"
            : null;

    private static int Times(string formula, string name) => new FormulaShape(formula).Times(name);

    /// <summary>Where the wrong cell stands, if it also stands where it belongs.</summary>
    private static string Spot(KeyEdit.OtherCell edit, AnswerFinding.NearMiss miss, Part part, FormulaShape formula, SheetTerms sheet)
    {
        if (Times(part.Key.ToString(), edit.Written) == 0) return "";
        return ChangedSpot.Between(part.Key.ToString(), miss.Formula) is var (right, written) && formula.Holds(sheet.Cells(written))
            ? $" Where you have {sheet.Cells(written)}, write {sheet.Cells(right)}."
            : $" Where {sheet.Cells(edit.Written)} stands beside that, it is right.";
    }
}
