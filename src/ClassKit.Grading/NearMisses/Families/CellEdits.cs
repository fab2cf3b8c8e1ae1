using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>Another cell of the sheet: those in the same unit are the likelier, and then those that stand nearer.</summary>
internal static class CellEdits
{
    public static IEnumerable<Neighbour> At(Place place, Sheet sheet)
    {
        if (place.Node is not NameNode name || sheet.Find(name.Name) is not { } own)
            return [];
        var isWhole =
            place.Parent is BinaryNode { Operator: BinaryOperator.Multiply } product
            && IsShare(ReferenceEquals(product.Left, name) ? product.Right : product.Left, sheet);
        return sheet
            .Others(own)
            .Select(other => new Neighbour(place.Put(Tree.Name(other.Id)), EditFamily.OtherCell, () =>
                [new KeyEdit.OtherCell(own.Id, other.Id, isWhole)]
            ));
    }

    private static bool IsShare(FormulaNode node, Sheet sheet) =>
        node is NameNode { Name: var share } && sheet.Find(share) is { } quantity && quantity.Unit.IsPercent;
}
