using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.NearMisses.Families;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses;

/// <summary>The wrong formulas that are one edit of a tree away.</summary>
internal static class Neighbours
{
    /// <summary>
    /// All of them, those that are told first before others: the likelier family, and then from the whole formula inwards. Some behave
    /// alike.
    /// </summary>
    /// <param name="root">The formula.</param>
    /// <param name="sheet">What can be used.</param>
    /// <param name="last">The least likely family that is wanted.</param>
    /// <param name="keepsAll">False to leave out those that lose half of the method.</param>
    public static IEnumerable<Neighbour> Of(FormulaNode root, Sheet sheet, EditFamily last = EditFamily.TakenIn, bool keepsAll = true)
    {
        var all = new List<Neighbour>();
        foreach (var place in Place.In(root).Take(SearchBudget.Places))
            Add(all, place, sheet, last);
        all.AddRange(OperationEdits.AsTyped(root));
        all.AddRange(WholeEdits.Of(root, sheet).TakeWhile(neighbour => neighbour.Family <= last));
        return InOrder(keepsAll ? all : all.FindAll(neighbour => !neighbour.LosesMuch), last);
    }

    /// <summary>There are so few families that looking through all for each is quicker than putting them in order.</summary>
    private static IEnumerable<Neighbour> InOrder(List<Neighbour> all, EditFamily last)
    {
        for (var family = EditFamily.OtherCell; family <= last; family++)
        {
            foreach (var neighbour in all)
            {
                if (neighbour.Family == family)
                    yield return neighbour;
            }
        }
    }

    private static void Add(List<Neighbour> all, Place place, Sheet sheet, EditFamily last)
    {
        all.AddRange(OperationEdits.At(place));
        all.AddRange(TermEdits.At(place, twice: last >= EditFamily.CountedTwice));
        if (last >= EditFamily.OtherBrackets)
            all.AddRange(BracketEdits.At(place));
        all.AddRange(CellEdits.At(place, sheet));
        all.AddRange(ShareEdits.At(place, sheet));
        all.AddRange(UnitEdits.At(place, sheet));
        all.AddRange(ConstantEdits.At(place));
        if (last >= EditFamily.OtherRounding)
            all.AddRange(RoundingEdits.At(place));
    }
}
