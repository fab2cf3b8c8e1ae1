using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What an edit is to somebody who sees the whole formula: behind a minus what is added is taken away, and under the line what is
/// multiplied by is divided by.
/// </summary>
internal static class SeenFrom
{
    /// <summary>The edit with its operations as they are in the whole.</summary>
    /// <param name="edit">The edit.</param>
    /// <param name="key">The key, without brackets, in which its right piece stands.</param>
    public static KeyEdit Outside(KeyEdit edit, FormulaNode key) =>
        Over(key, edit.Right, (false, false)) is not var (minus, line) || (!minus && !line)
            ? edit
            : edit switch
            {
                KeyEdit.OtherOperation operation => operation with
                {
                    Belongs = Turned(operation.Belongs, minus, line),
                    Used = Turned(operation.Used, minus, line),
                },
                KeyEdit.LeftOut left => left with { Operation = Turned(left.Operation, minus, line) },
                KeyEdit.TakenIn taken => taken with { Operation = Turned(taken.Operation, minus, line) },
                _ => edit,
            };

    /// <summary>Whether a piece of the formula stands behind a minus, and whether under a line; null where it stands nowhere.</summary>
    private static (bool Minus, bool Line)? Over(FormulaNode node, string piece, (bool Minus, bool Line) over)
    {
        if (FormulaShape.Text(node) == piece)
            return over;
        if (node is not BinaryNode binary)
            return node.Children().Select(child => Over(child, piece, (false, false))).FirstOrDefault(found => found is not null);
        var (left, right) = binary.Operator switch
        {
            BinaryOperator.Add => ((over.Minus, false), (over.Minus, false)),
            BinaryOperator.Subtract => ((over.Minus, false), (!over.Minus, false)),
            BinaryOperator.Multiply => ((false, over.Line), (false, over.Line)),
            BinaryOperator.Divide => ((false, over.Line), (false, !over.Line)),
            _ => ((false, false), (false, false)),
        };
        return Over(binary.Left, piece, left) ?? Over(binary.Right, piece, right);
    }

    private static BinaryOperator Turned(BinaryOperator operation, bool minus, bool line) =>
        operation switch
        {
            BinaryOperator.Add when minus => BinaryOperator.Subtract,
            BinaryOperator.Subtract when minus => BinaryOperator.Add,
            BinaryOperator.Multiply when line => BinaryOperator.Divide,
            BinaryOperator.Divide when line => BinaryOperator.Multiply,
            _ => operation,
        };
}
