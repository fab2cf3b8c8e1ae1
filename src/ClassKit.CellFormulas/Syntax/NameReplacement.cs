namespace ClassKit.CellFormulas.Syntax;

/// <summary>Puts other operands in the places of names.</summary>
internal sealed class NameReplacement : TreeRewriter
{
    private readonly Func<string, string?> _reference;
    private readonly Dictionary<string, FormulaNode?> _known = new(StringComparer.Ordinal);

    private NameReplacement(Func<string, string?> reference) => _reference = reference;

    public static FormulaNode In(FormulaNode root, Func<string, string?> reference) => new NameReplacement(reference).Rewrite(root);

    protected override FormulaNode Replace(NameNode name)
    {
        if (!_known.TryGetValue(name.Name, out var operand))
        {
            operand = _reference(name.Name) is { } text ? CellFormula.Of(text).Root : null;
            _known.Add(name.Name, operand);
        }

        return operand ?? name;
    }

    /// <summary>An operand that is itself an operation keeps together only in parentheses.</summary>
    protected override FormulaNode AsOperand(FormulaNode node) =>
        node is PrefixNode or PercentNode or BinaryNode ? new GroupNode(node, node.Span) : node;
}
