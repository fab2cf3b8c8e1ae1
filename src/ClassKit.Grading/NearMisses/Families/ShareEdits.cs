using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>A share for its rest or for the whole with it, and a share put on at one end where it belongs taken off at the other.</summary>
internal static class ShareEdits
{
    public static IEnumerable<Neighbour> At(Place place, Sheet sheet) =>
        place.Node switch
        {
            NameNode name when !IsWithOne(place.Parent) && sheet.Find(name.Name) is { IsShare: true } =>
            [
                Rest(place, Tree.Binary(BinaryOperator.Subtract, Tree.Number(1), name)),
                Rest(place, Tree.Binary(BinaryOperator.Add, Tree.Number(1), name)),
            ],
            BinaryNode binary when IsWithOne(binary) => [Rest(place, binary.Right)],
            BinaryNode { Operator: BinaryOperator.Divide or BinaryOperator.Multiply, Right: BinaryNode share } binary
                when IsWithOne(share) => [OtherEnd(place, binary, share)],
            _ => [],
        };

    private static bool IsWithOne(FormulaNode? node) =>
        node is BinaryNode { Operator: BinaryOperator.Add or BinaryOperator.Subtract } binary && Tree.IsOne(binary.Left);

    private static Neighbour Rest(Place place, FormulaNode written) =>
        new(place.Put(written), EditFamily.ShareForRest, () => [new KeyEdit.ShareForRest(Tree.Text(place.Node), Tree.Text(written))]);

    private static Neighbour OtherEnd(Place place, BinaryNode binary, BinaryNode share)
    {
        var written = binary with
        {
            Operator = binary.Operator == BinaryOperator.Divide ? BinaryOperator.Multiply : BinaryOperator.Divide,
            Right = share with { Operator = share.Operator == BinaryOperator.Add ? BinaryOperator.Subtract : BinaryOperator.Add },
        };
        return new(place.Put(written), EditFamily.ShareOfOtherEnd, () =>
            [new KeyEdit.ShareOfOtherEnd(Tree.Text(binary), Tree.Text(written))]
        );
    }
}
