using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>
/// A factor that is raised to a power left out of a formula as it is typed, so that the power takes what stands before it; or typed twice,
/// once without the power.
/// </summary>
internal static class PowerEdits
{
    public static IEnumerable<Neighbour> Of(FormulaNode root) => Place.In(root).Take(SearchBudget.Places).SelectMany(At);

    private static IEnumerable<Neighbour> At(Place place)
    {
        if (
            place.Node
            is not BinaryNode
            {
                Operator: BinaryOperator.Multiply or BinaryOperator.Divide,
                Right: BinaryNode { Operator: BinaryOperator.Power } power
            } binary
        )
            yield break;
        var left = Raised(binary.Left, power);
        yield return new(place.Put(left), EditFamily.LeftOut, () =>
            [new KeyEdit.LeftOut(Tree.Text(binary), Tree.Text(left), Tree.Text(power.Left), binary.Operator)]
        );
        var twice = binary with { Left = Tree.Binary(binary.Operator, binary.Left, power.Left) };
        yield return new(place.Put(twice), EditFamily.CountedTwice, () =>
            [new KeyEdit.CountedTwice(Tree.Text(binary), Tree.Text(twice), Tree.Text(power.Left))]
        );
    }

    /// <summary>A power takes the last factor before it.</summary>
    private static BinaryNode Raised(FormulaNode before, BinaryNode power) =>
        before is BinaryNode { Operator: BinaryOperator.Multiply or BinaryOperator.Divide } product
            ? product with
            {
                Right = power with { Left = product.Right },
            }
            : power with
            {
                Left = before,
            };
}
