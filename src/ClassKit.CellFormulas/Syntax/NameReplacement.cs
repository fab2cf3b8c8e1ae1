namespace ClassKit.CellFormulas.Syntax;

/// <summary>Puts other operands in the places of names.</summary>
internal sealed class NameReplacement : TreeRewriter
{
    private readonly Func<string, FormulaNode?> _operand;
    private readonly Dictionary<string, FormulaNode?> _known = new(StringComparer.Ordinal);

    private NameReplacement(Func<string, FormulaNode?> operand) => _operand = operand;

    public static FormulaNode In(FormulaNode root, Func<string, FormulaNode?> operand) => new NameReplacement(operand).Rewrite(root);

    protected override FormulaNode Replace(NameNode name)
    {
        if (!_known.TryGetValue(name.Name, out var operand))
        {
            operand = _operand(name.Name);
            _known.Add(name.Name, operand);
        }

        return operand ?? name;
    }

    /// <summary>An operand that is itself an operation keeps together only in parentheses.</summary>
    protected override FormulaNode AsOperand(FormulaNode node) =>
        node is PrefixNode or PercentNode or BinaryNode ? new GroupNode(node, node.Span) : node;
}
