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
            ? Shown(miss, part, new(formula), new(exercise, miss.Cells))
            : TypedNumberWords.Of(miss, part, WithoutCells(exercise));
        return $"{told.What}.{told.Cure}{SolutionPlace.Of(told.Of, exercise, part, miss.IsShown, isCured: told.Cure.Length > 0)}";
    }

    /// <summary>The observation alone, for a typed number or a group of answers: no cells, what their sheets call them.</summary>
    public static string OfMethod(IReadOnlyList<KeyEdit> edits, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(edits);
        var sheet = WithoutCells(exercise);
        return string.Join("; and ", edits.Select(edit => EditWords.What(edit, sheet)));
    }

    private static SheetTerms WithoutCells(Exercise exercise) => new(exercise, new Dictionary<string, string>());

    private static NearMissTold Shown(AnswerFinding.NearMiss miss, Part part, FormulaShape formula, SheetTerms sheet)
    {
        var key = new FormulaShape(part.Key.ToString());
        var brackets = new KeyEdit.OtherBrackets(part.Key.ToString()[1..], miss.Formula[1..]);
        if (formula.DiffersInBracketsAloneFrom(sheet.Cells(brackets.Right)))
            return Said(brackets);
        if (new OwnSlip(sheet).Between(key.Tree!, formula.Tree) is { } own)
            return Said(own);
        var what = string.Join("; and ", miss.Edits.Select(edit => EditWords.What(edit, sheet, key)));
        // Somebody went another way to the same, and what they find in their formula is not this.
        if (!miss.Edits.All(edit => IsSeen(edit, formula, sheet)))
            return new TypedSign(sheet).Between(part.Key, formula) is { } sign
                ? Said(sign)
                : new($"Your formula works out as if {what}", "", []);
        if (miss.Edits is not [var one])
            return new($"It looks as if two things happened: {what}", "", miss.Edits);
        return one is KeyEdit.OtherCell other
            ? new($"It looks as if {what}", WrongCell.Cure(other, miss, part, formula, sheet), miss.Edits)
            : Said(one);

        NearMissTold Said(KeyEdit edit) =>
            new($"It looks as if {EditWords.What(edit, sheet, key)}", EditCures.Of(edit, formula, key, sheet), [edit]);
    }

    /// <summary>True if what is said of an edit is seen in the formula: one of equal value may be written quite otherwise.</summary>
    private static bool IsSeen(KeyEdit edit, FormulaShape formula, SheetTerms sheet) =>
        edit
            is KeyEdit.LeftOut
                or KeyEdit.TakenIn
                or KeyEdit.CountedTwice
                or KeyEdit.ShareForRest
                or KeyEdit.ShareOfOtherEnd
                or KeyEdit.Inverse
                or KeyEdit.OtherSign
                or KeyEdit.OtherRounding
        || formula.Holds(sheet.Cells(edit.Written));
}
