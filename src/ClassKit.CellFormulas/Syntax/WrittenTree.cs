namespace ClassKit.CellFormulas.Syntax;

/// <summary>
/// What becomes of a tree that is written down and read again, without writing and reading: neighbours of a key are made by the thousand.
/// </summary>
public static class WrittenTree
{
    /// <summary>The tree with the parentheses that keep its shape when it is written down, and no others.</summary>
    public static FormulaNode Bracketed(FormulaNode root) => Brackets.Needed(Brackets.Without(root));

    /// <summary>
    /// The shape in which a tree with parentheses is read if it is written down as it stands: what was changed in it takes to itself what
    /// its operator binds.
    /// </summary>
    public static FormulaNode Read(FormulaNode root) =>
        root switch
        {
            GroupNode group => Read(group.Inner),
            BinaryNode { Operator: > BinaryOperator.Union } binary => OfChain(binary),
            PrefixNode prefix => prefix with { Operand = Read(prefix.Operand) },
            PercentNode percent => percent with { Operand = Read(percent.Operand) },
            CallNode call => call with { Arguments = [.. call.Arguments.Select(Read)] },
            _ => root,
        };

    /// <summary>
    /// Operators between operands, as they stand in a row: the one that binds loosest is the root, and of several the last.
    /// </summary>
    private static FormulaNode OfChain(BinaryNode binary)
    {
        var (operands, operators) = (new List<FormulaNode>(), new List<BinaryNode>());
        Collect(binary, operands, operators);
        return Built(operands, operators, 0, operators.Count);
    }

    private static void Collect(FormulaNode node, List<FormulaNode> operands, List<BinaryNode> operators)
    {
        if (node is not BinaryNode { Operator: > BinaryOperator.Union } binary)
        {
            operands.Add(Read(node));
            return;
        }
        Collect(binary.Left, operands, operators);
        operators.Add(binary);
        Collect(binary.Right, operands, operators);
    }

    private static FormulaNode Built(List<FormulaNode> operands, List<BinaryNode> operators, int from, int to)
    {
        if (from == to)
            return operands[from];
        var root = from;
        for (var at = from + 1; at < to; at++)
        {
            if (Brackets.Level(operators[at].Operator) >= Brackets.Level(operators[root].Operator))
                root = at;
        }
        return operators[root] with { Left = Built(operands, operators, from, root), Right = Built(operands, operators, root + 1, to) };
    }
}
