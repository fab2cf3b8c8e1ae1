using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Wording.Answers;

/// <summary>The operation in which two formulas of one shape differ, and in nothing but one of its two operands.</summary>
/// <param name="Right">As it belongs.</param>
/// <param name="Written">As it is.</param>
/// <param name="IsLeft">True if the first of the two operands is another.</param>
/// <param name="IsWhole">True if there is nothing around it.</param>
internal sealed record ChangedSpot(BinaryNode Right, BinaryNode Written, bool IsLeft, bool IsWhole)
{
    /// <summary>The operand that is the same in both.</summary>
    public FormulaNode Beside => IsLeft ? Right.Right : Right.Left;

    /// <summary>The spot; null where the two differ in more than a name or a number.</summary>
    public static ChangedSpot? Between(FormulaNode right, FormulaNode written) => In(right, written, isWhole: true);

    private static ChangedSpot? In(FormulaNode right, FormulaNode written, bool isWhole) =>
        (right, written) switch
        {
            (BinaryNode one, BinaryNode other) when one.Operator == other.Operator => InOperand(one, other, isWhole),
            (CallNode one, CallNode other) when one.Name == other.Name && one.Arguments.Count == other.Arguments.Count => one
                .Arguments.Zip(other.Arguments)
                .Where(pair => !AreSame(pair.First, pair.Second))
                .ToList()
                is [var only]
                ? In(only.First, only.Second, isWhole: false)
                : null,
            _ => null,
        };

    private static ChangedSpot? InOperand(BinaryNode right, BinaryNode written, bool isWhole)
    {
        var isLeft = !AreSame(right.Left, written.Left);
        if (isLeft && !AreSame(right.Right, written.Right))
            return null;
        var (inner, innerWritten) = isLeft ? (right.Left, written.Left) : (right.Right, written.Right);
        return inner is NameNode or NumberNode ? new(right, written, isLeft, isWhole) : In(inner, innerWritten, isWhole: false);
    }

    private static bool AreSame(FormulaNode one, FormulaNode other) => FormulaShape.Text(one) == FormulaShape.Text(other);
}
