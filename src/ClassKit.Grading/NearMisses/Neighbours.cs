using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.NearMisses.Families;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses;

/// <summary>The wrong formulas that are one edit of a tree away.</summary>
internal static class Neighbours
{
    /// <summary>All of them, those that are told first before others: the likelier family, and then from the whole formula inwards. Some behave alike.</summary>
    public static IReadOnlyList<Neighbour> Of(FormulaNode root, IReadOnlyList<SheetQuantity> sheet) =>
    [
        .. Place.In(root).Take(SearchBudget.Places).SelectMany(place => At(place, sheet)).Concat(OperationEdits.AsTyped(root)).Concat(WholeEdits.Of(root, sheet)).OrderBy(neighbour => neighbour.Family),
    ];

    private static IEnumerable<Neighbour> At(Place place, IReadOnlyList<SheetQuantity> sheet) =>
    [
        .. OperationEdits.At(place), .. TermEdits.At(place), .. BracketEdits.At(place), .. CellEdits.At(place, sheet), .. ShareEdits.At(place, sheet),
        .. UnitEdits.At(place, sheet), .. ConstantEdits.At(place), .. RoundingEdits.At(place),
    ];
}
