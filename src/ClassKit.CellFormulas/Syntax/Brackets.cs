namespace ClassKit.CellFormulas.Syntax;

/// <summary>Takes the parentheses out of a tree that was typed, and puts those that it needs into one that was made.</summary>
internal static class Brackets
{
    /// <summary>The same tree without parentheses: what is left says by its shape what belongs together.</summary>
    public static FormulaNode Without(FormulaNode node) =>
        node switch
        {
            GroupNode group => Without(group.Inner),
            BinaryNode binary => binary with { Left = Without(binary.Left), Right = Without(binary.Right) },
            PrefixNode prefix => prefix with { Operand = Without(prefix.Operand) },
            PercentNode percent => percent with { Operand = Without(percent.Operand) },
            SpillNode spill => spill with { Operand = Without(spill.Operand) },
            CallNode call => call with { Arguments = [.. call.Arguments.Select(Without)] },
            _ => node,
        };

    /// <summary>A tree without parentheses, with those that keep its shape when it is written down.</summary>
    public static FormulaNode Needed(FormulaNode node) =>
        node switch
        {
            GroupNode group => group with { Inner = Needed(group.Inner) },
            BinaryNode binary => binary with
            {
                Left = Beside(binary.Left, binary.Operator, isRight: false),
                Right = Beside(binary.Right, binary.Operator, isRight: true),
            },
            PrefixNode prefix => prefix with { Operand = OfSign(prefix.Operand) },
            PercentNode percent => percent with { Operand = OfSign(percent.Operand) },
            SpillNode spill => spill with { Operand = Needed(spill.Operand) },
            CallNode call => call with { Arguments = [.. call.Arguments.Select(Needed)] },
            _ => node,
        };

    private static FormulaNode Beside(FormulaNode operand, BinaryOperator op, bool isRight) =>
        operand switch
        {
            BinaryNode inner when Level(inner.Operator) > Level(op) || (isRight && Level(inner.Operator) == Level(op)) => In(operand),
            PrefixNode when isRight => In(operand),
            _ => Needed(operand),
        };

    private static FormulaNode OfSign(FormulaNode operand) => operand is BinaryNode or PrefixNode ? In(operand) : Needed(operand);

    private static GroupNode In(FormulaNode node) => new(Needed(node), node.Span);

    /// <summary>Operators that bind alike stand on one level; the lowest binds tightest.</summary>
    /// <remarks>Source: ECMA-376 Part 1, 18.17.2.2.</remarks>
    public static BinaryOperator Level(BinaryOperator op) =>
        op switch
        {
            BinaryOperator.Divide => BinaryOperator.Multiply,
            BinaryOperator.Subtract => BinaryOperator.Add,
            > BinaryOperator.Equal => BinaryOperator.Equal,
            _ => op,
        };
}
