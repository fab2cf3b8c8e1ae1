using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>Brackets left out, or set around other neighbours: what stands beside an operation is then another.</summary>
internal static class BracketEdits
{
    public static IEnumerable<Neighbour> At(Place place)
    {
        if (place.Node is not BinaryNode binary || !Tree.IsArithmetic(binary.Operator))
            yield break;
        if (IsArithmetic(binary.Right))
            yield return Of(place, binary, WithFirst(binary.Right, first => binary with { Right = first }));
        if (binary.Left is BinaryNode left && Tree.IsArithmetic(left.Operator))
            yield return Of(place, binary, left with { Right = binary with { Left = left.Right } });
    }

    /// <summary>The tree with another operand in the place of the one that is written first.</summary>
    private static FormulaNode WithFirst(FormulaNode node, Func<FormulaNode, FormulaNode> other) =>
        IsArithmetic(node) ? (BinaryNode)node with { Left = WithFirst(((BinaryNode)node).Left, other) } : other(node);

    private static bool IsArithmetic(FormulaNode node) => node is BinaryNode { Operator: var op } && Tree.IsArithmetic(op);

    private static Neighbour Of(Place place, FormulaNode right, FormulaNode written) =>
        new(place.Put(written), EditFamily.OtherBrackets, () => [new KeyEdit.OtherBrackets(Tree.Text(right), Tree.Text(written))]);
}
