using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>Another cell of the sheet: those in the same unit are the likelier, and then those that stand nearer.</summary>
internal static class CellEdits
{
    public static IEnumerable<Neighbour> At(Place place, IReadOnlyList<SheetQuantity> sheet)
    {
        if (place.Node is not NameNode name) return [];
        var own = sheet.Select((quantity, row) => (Quantity: quantity, Row: row)).FirstOrDefault(one => IsOf(one.Quantity, name.Name));
        if (own.Quantity is null) return [];
        var isWhole = place.Parent is BinaryNode { Operator: BinaryOperator.Multiply } product && IsShare(ReferenceEquals(product.Left, name) ? product.Right : product.Left, sheet);
        return sheet.Select((quantity, row) => (Quantity: quantity, Row: row)).Where(other => other.Row != own.Row)
            .OrderBy(other => other.Quantity.Unit == own.Quantity.Unit ? 0 : 1).ThenBy(other => Math.Abs(other.Row - own.Row))
            .Select(other => new Neighbour(place.Put(Tree.Name(other.Quantity.Id)), EditFamily.OtherCell, () => [new KeyEdit.OtherCell(own.Quantity.Id, other.Quantity.Id, isWhole)]));
    }

    private static bool IsShare(FormulaNode node, IReadOnlyList<SheetQuantity> sheet) =>
        node is NameNode { Name: var share } && sheet.FirstOrDefault(one => IsOf(one, share)) is { } quantity && AnswerUnit.IsPercent(quantity.Unit);

    private static bool IsOf(SheetQuantity quantity, string name) => string.Equals(quantity.Id, name, StringComparison.OrdinalIgnoreCase);
}
