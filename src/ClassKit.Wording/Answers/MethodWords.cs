using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Wording.Mending;

namespace ClassKit.Wording.Answers;

/// <summary>What a wrong method has otherwise than the key, where the formula is known and no sheet that it was written on.</summary>
internal static class MethodWords
{
    /// <summary>The rest of a sentence that begins with “It looks as if”.</summary>
    /// <param name="edits">What it has otherwise than the key: at least one thing.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    /// <param name="formula">The method over the exercise's names.</param>
    /// <param name="sheet">How quantities are called.</param>
    public static string Of(IReadOnlyList<KeyEdit> edits, Exercise exercise, Part part, CellFormula formula, SheetTerms sheet)
    {
        var key = new FormulaShape(part.Key.ToString());
        if (key.DiffersInBracketsAloneFrom(formula.ToString()[1..]))
            return EditWords.What(new KeyEdit.OtherBrackets(part.Key.ToString()[1..], formula.ToString()[1..]), sheet, key);
        if (edits is [var one] && IsTold(one))
            return EditWords.What(one, sheet, key);
        return PartMending.Of(exercise, part).Change(Flat.Of(formula.Shape)) is { } reading
            ? OwnChangeWords.What(reading.Change, sheet)
            : Several(edits, part, sheet, key);
    }

    /// <summary>
    /// True for an edit that has a story of its own; what was done with a term that is one too many, missing or has another sign depends on
    /// what stands over it, and is read in the formula.
    /// </summary>
    public static bool IsTold(KeyEdit edit) =>
        edit
            is not (
                KeyEdit.OtherOperation
                or KeyEdit.LeftOut
                or KeyEdit.TakenIn
                or KeyEdit.CountedTwice
                or KeyEdit.TurnedRound
                or KeyEdit.OtherBrackets
            );

    /// <summary>All edits as seen from outside; the same in two places once.</summary>
    public static string Several(IReadOnlyList<KeyEdit> edits, Part part, SheetTerms sheet, FormulaShape key)
    {
        var what = edits.Select(edit => EditWords.What(SeenFrom.Outside(edit, part.Key.Shape), sheet, key)).ToList();
        return what.Distinct().ToList() is [var twice] && what.Count > 1 ? $"{twice}, in two places" : string.Join("; and ", what);
    }
}
