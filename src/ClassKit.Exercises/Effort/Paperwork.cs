using System.Diagnostics;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Exercises.Effort;

/// <summary>Operations and carries on the way through one formula.</summary>
internal static class Paperwork
{
    /// <summary>Counts them.</summary>
    /// <param name="node">The formula, or a part of it.</param>
    /// <param name="value">The value of a name; null for one that LET binds.</param>
    public static int Of(FormulaNode node, Func<string, double?> value)
    {
        var effort = 0;
        Work(node, value, ref effort);
        return effort;
    }

    /// <returns>The value, as far as plain arithmetic leads to it; behind a function it is no longer followed.</returns>
    private static double? Work(FormulaNode node, Func<string, double?> value, ref int effort)
    {
        switch (node)
        {
            case NumberNode number:
                return number.Value;
            case NameNode name:
                return value(name.Name);
            case GroupNode group:
                return Work(group.Inner, value, ref effort);
            case PercentNode percent:
                return Work(percent.Operand, value, ref effort) / 100;
            case PrefixNode prefix:
                var operand = Work(prefix.Operand, value, ref effort);
                return prefix.Operator == PrefixOperator.Minus ? -operand : operand;
            case BinaryNode binary:
                var left = Work(binary.Left, value, ref effort);
                var right = Work(binary.Right, value, ref effort);
                effort++;
                return left is { } one && right is { } other ? Combine(binary.Operator, one, other, ref effort) : null;
            case CallNode call:
                effort++;
                foreach (var argument in call.Arguments)
                    Work(argument, value, ref effort);
                return null;
            case TextNode
            or LogicalNode
            or ErrorNode
            or ArrayNode
            or ReferenceNode
            or SpillNode
            or TableNode
            or MissingNode
            or UnsupportedNode:
                return null;
            default:
                throw new UnreachableException($"It is not known how much work {node.GetType().Name} is.");
        }
    }

    private static double? Combine(BinaryOperator operation, double left, double right, ref int effort)
    {
        switch (operation)
        {
            case BinaryOperator.Multiply:
                effort += Carries.InProduct(Cut(left), Cut(right));
                return left * right;
            case BinaryOperator.Divide when right != 0:
                effort += Carries.InProduct(Cut(left / right), Cut(right));
                return left / right;
            case BinaryOperator.Add:
                effort += Carries.InSum(Cut(left), Cut(right));
                return left + right;
            case BinaryOperator.Subtract:
                effort += Carries.InSum(Cut(left - right), Cut(right));
                return left - right;
            case BinaryOperator.Power:
                return Math.Pow(left, right);
            default:
                return null;
        }
    }

    private static decimal Cut(double number) => Math.Abs(Digits.Cut(number, EffortMeasure.WorkingDigits));
}
