using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>
/// The one thing that is otherwise in a student's formula as they wrote it, where it is the key but for that: of what comes to the same by
/// another way they need not be told.
/// </summary>
/// <param name="sheet">The student's sheet.</param>
internal sealed class OwnSlip(SheetTerms sheet)
{
    /// <summary>
    /// A minus before the whole, one divided by it, another operation, or one the other way round; null where there is more.
    /// </summary>
    /// <param name="key">The key, over the exercise's names.</param>
    /// <param name="written">The student's formula, over cells; null for a typed number.</param>
    public KeyEdit? Between(FormulaNode key, FormulaNode? written) =>
        written switch
        {
            PrefixNode { Operator: PrefixOperator.Minus, Operand: var whole } when AreSame(key, whole) => new KeyEdit.OtherSign(
                Text(key),
                Text(new PrefixNode(PrefixOperator.Minus, key, default))
            ),
            BinaryNode { Operator: BinaryOperator.Divide, Left: NumberNode { Value: 1 } one, Right: var whole } when AreSame(key, whole) =>
                new KeyEdit.Inverse(Text(key), Text(new BinaryNode(BinaryOperator.Divide, one, key, default))),
            _ => InOperation(key, written),
        };

    private KeyEdit? InOperation(FormulaNode key, FormulaNode? written)
    {
        if (
            key is not BinaryNode { Operator: >= BinaryOperator.Power and <= BinaryOperator.Subtract } belongs
            || written is not BinaryNode { Operator: >= BinaryOperator.Power and <= BinaryOperator.Subtract } used
        )
            return null;
        var (isLeft, isRight) = (AreSame(belongs.Left, used.Left), AreSame(belongs.Right, used.Right));
        if (belongs.Operator != used.Operator)
            return isLeft && isRight
                ? new KeyEdit.OtherOperation(
                    Text(belongs),
                    Text(belongs with { Operator = used.Operator }),
                    belongs.Operator,
                    used.Operator
                )
                : null;
        return isLeft ? InOperation(belongs.Right, used.Right)
            : isRight ? InOperation(belongs.Left, used.Left)
            : IsTurned(belongs, used)
                ? new KeyEdit.TurnedRound(
                    Text(belongs),
                    Text(belongs with { Left = belongs.Right, Right = belongs.Left }),
                    belongs.Operator
                )
            : null;
    }

    private bool IsTurned(BinaryNode belongs, BinaryNode used) =>
        belongs.Operator is not (BinaryOperator.Add or BinaryOperator.Multiply)
        && AreSame(belongs.Left, used.Right)
        && AreSame(belongs.Right, used.Left);

    private bool AreSame(FormulaNode key, FormulaNode written) =>
        sheet.Cells(Text(key)).Equals(Text(written), StringComparison.OrdinalIgnoreCase);

    private static string Text(FormulaNode node) => FormulaShape.Text(node);
}
