using System.Runtime.CompilerServices;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// Works out trees of numbers, names and the operators of arithmetic, as an interpreter does and without the cost of making one: nearly
/// every key is such a tree, and is tried thousands of times.
/// </summary>
internal static class PlainArithmetic
{
    /// <summary>
    /// The number that a tree gives; none where anything but a finite number comes up on the way: what becomes of that, the interpreter
    /// knows.
    /// </summary>
    /// <param name="node">The tree.</param>
    /// <param name="names">What each name stands for. One that is looked up in vain may be there in another letter case, which is for the
    /// interpreter to find.</param>
    /// <param name="steps">Counts a step for every node.</param>
    public static double? Number(FormulaNode node, IReadOnlyDictionary<string, CellValue> names, ref int steps)
    {
        var number = Of(node, names, ref steps);
        return double.IsFinite(number) ? number : null;
    }

    private static double Of(FormulaNode node, IReadOnlyDictionary<string, CellValue> names, ref int steps)
    {
        steps++;
        return node switch
        {
            NumberNode number => number.Value,
            NameNode { Sheet: null } name => names.TryGetValue(name.Name, out var value) && value.IsNumber ? value.Number : double.NaN,
            BinaryNode { Operator: >= BinaryOperator.Power and <= BinaryOperator.Subtract } binary => Apply(binary, names, ref steps),
            GroupNode group => Of(group.Inner, names, ref steps),
            PrefixNode { Operator: PrefixOperator.Plus } plus => Of(plus.Operand, names, ref steps),
            PrefixNode { Operator: PrefixOperator.Minus } minus => Operators.Negate(Of(minus.Operand, names, ref steps)),
            PercentNode percent => Operators.Percent(Of(percent.Operand, names, ref steps)),
            _ => PlainRounding.In(node) is var (rounded, round) && Of(rounded, names, ref steps) is var number && double.IsFinite(number)
                ? round(number)
                : double.NaN,
        };
    }

    private static double Apply(BinaryNode binary, IReadOnlyDictionary<string, CellValue> names, ref int steps)
    {
        if (!RuntimeHelpers.TryEnsureSufficientExecutionStack())
            return double.NaN;
        var left = Of(binary.Left, names, ref steps);
        if (!double.IsFinite(left))
            return double.NaN;
        var right = Of(binary.Right, names, ref steps);
        return double.IsFinite(right) ? Operators.Number(binary.Operator, left, right) : double.NaN;
    }
}
