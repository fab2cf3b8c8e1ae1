using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Wording.Answers;

/// <summary>The smallest piece of two formulas of one shape around the one operand in which they differ.</summary>
internal static class ChangedSpot
{
    /// <summary>The piece in both, without <c>=</c>; null where it is the whole, or where they differ in more than an operand.</summary>
    public static (string Right, string Written)? Between(string right, string written)
    {
        var (one, other) = (CellFormula.Of(right).Shape, CellFormula.Of(written).Shape);
        for (var isWhole = true; one is BinaryNode whole && other is BinaryNode changed && whole.Operator == changed.Operator; isWhole = false)
        {
            var isLeft = !AreSame(whole.Left, changed.Left);
            if (isLeft && !AreSame(whole.Right, changed.Right)) return null;
            var (inner, innerChanged) = isLeft ? (whole.Left, changed.Left) : (whole.Right, changed.Right);
            if (inner is not BinaryNode) return isWhole || inner is not NameNode ? null : (Text(whole), Text(changed));
            (one, other) = (inner, innerChanged);
        }
        return null;
    }

    private static bool AreSame(FormulaNode one, FormulaNode other) => Text(one) == Text(other);

    private static string Text(FormulaNode node) => CellFormula.OfTree(node).ToString()[1..];
}
