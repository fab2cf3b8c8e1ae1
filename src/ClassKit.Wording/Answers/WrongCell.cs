using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What to write where a formula has another cell than the right one: a cell that also stands where it belongs is named with its place.
/// </summary>
internal static class WrongCell
{
    private static readonly string[] Ordinals = ["first", "second", "third", "fourth"];

    /// <summary>A sentence with a space before it; empty where the place cannot be said.</summary>
    public static string Cure(KeyEdit.OtherCell edit, AnswerFinding.NearMiss miss, Part part, FormulaShape formula, SheetTerms sheet)
    {
        var (right, written) = (sheet.Cells(edit.Right), sheet.Cells(edit.Written));
        if (formula.Times(written) == 1)
            return $" Write {right} where you have {written}.";
        if (
            formula.IsWritten(sheet.Cells(miss.Formula[1..]))
            && Place(edit, part.Key, CellFormula.Of(miss.Formula)) is { } place
            && place < Ordinals.Length
        )
            return $" Change the {Ordinals[place]} {written} to {right}.";
        return
            ChangedSpot.Between(part.Key.Shape, CellFormula.Of(miss.Formula).Shape) is { IsWhole: false } spot
            && sheet.Cells(spot.Written) is var own
            && formula.Times(own) == 1
            ? $" Where you have {own}, write {sheet.Cells(spot.Right)}."
            : "";
    }

    /// <summary>Which of its places is the wrong one, from 0; null where the two differ in more than one name.</summary>
    private static int? Place(KeyEdit.OtherCell edit, CellFormula key, CellFormula miss)
    {
        var pairs = Names(key.Shape).Zip(Names(miss.Shape)).ToList();
        var changed = pairs.FindIndex(pair => !IsSame(pair.First, pair.Second));
        return changed >= 0 && pairs.Count(pair => !IsSame(pair.First, pair.Second)) == 1 && IsSame(pairs[changed].Second, edit.Written)
            ? pairs.Take(changed).Count(pair => IsSame(pair.Second, edit.Written))
            : null;
    }

    private static IEnumerable<string> Names(FormulaNode node) => node is NameNode name ? [name.Name] : node.Children().SelectMany(Names);

    private static bool IsSame(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
