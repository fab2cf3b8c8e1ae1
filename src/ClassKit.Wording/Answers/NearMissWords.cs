using ClassKit.CellFormulas.Syntax;
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
        var (told, of) = miss.IsShown ? Shown(miss, part, new(formula), new(exercise, miss.Cells)) : ($"From your number, it looks as if {OfNumber(miss.Edits, part, WithoutCells(exercise))}.", miss.Edits);
        return told + SolutionPlace.Of(of, exercise, part, miss.IsShown);
    }

    /// <summary>The observation alone, for a typed number or a group of answers: no cells, what their sheets call them.</summary>
    public static string OfMethod(IReadOnlyList<KeyEdit> edits, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(edits);
        var sheet = WithoutCells(exercise);
        return string.Join("; and ", edits.Select(edit => EditWords.What(edit, sheet)));
    }

    private static SheetTerms WithoutCells(Exercise exercise) => new(exercise, new Dictionary<string, string>());

    /// <summary>What is told, and of what: nobody is led to a line of the worked solution that has nothing to do with it.</summary>
    private static (string Told, IReadOnlyList<KeyEdit> Of) Shown(AnswerFinding.NearMiss miss, Part part, FormulaShape formula, SheetTerms sheet)
    {
        var key = new FormulaShape(part.Key.ToString());
        var brackets = new KeyEdit.OtherBrackets(part.Key.ToString()[1..], miss.Formula[1..]);
        if (formula.DiffersInBracketsAloneFrom(sheet.Cells(brackets.Right))) return Said(brackets);
        if (new OwnSlip(sheet).Between(part.Key.Shape, formula.Tree) is { } own) return Said(own);
        if (!miss.Edits.All(edit => IsSeen(edit, formula, sheet))) return ($"Your formula comes to the same as {sheet.Cells(miss.Formula[1..])}, which is one step or two from the right one.", []);
        if (miss.Edits is not [var one]) return ($"It looks as if two things happened: {string.Join("; and ", miss.Edits.Select(edit => EditWords.What(edit, sheet, key)))}.", miss.Edits);
        return one is KeyEdit.OtherCell other ? ($"It looks as if {EditWords.What(one, sheet, key)}.{WrongCell.Cure(other, miss, part, formula, sheet)}", miss.Edits) : Said(one);

        (string, IReadOnlyList<KeyEdit>) Said(KeyEdit edit) => ($"It looks as if {EditWords.What(edit, sheet, key)}.{EditCures.Of(edit, formula, key, sheet)}", [edit]);
    }

    /// <summary>The same for a typed number. A quantity that belongs elsewhere in the method was used once more.</summary>
    private static string OfNumber(IReadOnlyList<KeyEdit> edits, Part part, SheetTerms sheet)
    {
        var key = new FormulaShape(part.Key.ToString());
        return string.Join("; and ", edits.Select(edit => edit switch
        {
            KeyEdit.OtherCell when key.Holds(edit.Written) => $"{sheet.Term(edit.Written)} was used once more, where {sheet.Term(edit.Right)} belongs",
            // The whole turned round is the right number with another sign, and a number does not tell how it came by that.
            KeyEdit.TurnedRound(var right, var written, BinaryOperator.Subtract) when key.IsWritten(right) => EditWords.What(new KeyEdit.OtherSign(right, written), sheet, key),
            _ => EditWords.What(edit, sheet, key),
        }));
    }

    /// <summary>True if what is said of an edit is seen in the formula: one of equal value may be written quite otherwise.</summary>
    private static bool IsSeen(KeyEdit edit, FormulaShape formula, SheetTerms sheet) => edit is KeyEdit.LeftOut or KeyEdit.TakenIn or KeyEdit.CountedTwice or KeyEdit.ShareForRest or KeyEdit.ShareOfOtherEnd or KeyEdit.Inverse or KeyEdit.OtherSign or KeyEdit.OtherRounding
        || formula.Holds(sheet.Cells(edit.Written));
}
