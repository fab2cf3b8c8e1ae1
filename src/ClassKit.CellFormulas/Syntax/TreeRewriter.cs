using System.Diagnostics;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>
/// Copies a tree with some of its operands replaced; parts without a change are shared. Knows which names LET binds, and leaves them alone.
/// </summary>
internal abstract class TreeRewriter
{
    private readonly List<string> _bound = [];

    /// <summary>The new tree.</summary>
    public FormulaNode Rewrite(FormulaNode node) =>
        node switch
        {
            NameNode name => name.Sheet is null && IsBound(name.Name) ? name : Replace(name),
            ReferenceNode reference => Replace(reference),
            PrefixNode prefix => Operand(prefix.Operand) is var operand && ReferenceEquals(operand, prefix.Operand)
                ? prefix
                : prefix with
                {
                    Operand = operand,
                },
            PercentNode percent => Operand(percent.Operand) is var operand && ReferenceEquals(operand, percent.Operand)
                ? percent
                : percent with
                {
                    Operand = operand,
                },
            SpillNode spill => Operand(spill.Operand) is var operand && ReferenceEquals(operand, spill.Operand)
                ? spill
                : spill with
                {
                    Operand = operand,
                },
            GroupNode group => Rewrite(group.Inner) is var inner && ReferenceEquals(inner, group.Inner)
                ? group
                : group with
                {
                    Inner = inner,
                },
            BinaryNode binary => Rewrite(binary),
            CallNode call => Rewrite(call),
            NumberNode or TextNode or LogicalNode or ErrorNode or ArrayNode or TableNode or MissingNode or UnsupportedNode => node,
            _ => throw new UnreachableException($"It is not known how to copy {node.GetType().Name}."),
        };

    protected virtual FormulaNode Replace(NameNode name) => name;

    protected virtual FormulaNode Replace(ReferenceNode reference) => reference;

    /// <summary>What to put for a name's replacement where an operator wants an operand.</summary>
    protected virtual FormulaNode AsOperand(FormulaNode node) => node;

    private bool IsBound(string name) => _bound.Contains(name, StringComparer.OrdinalIgnoreCase);

    private BinaryNode Rewrite(BinaryNode binary)
    {
        var left = Operand(binary.Left);
        var right = Operand(binary.Right);
        return ReferenceEquals(left, binary.Left) && ReferenceEquals(right, binary.Right)
            ? binary
            : binary with
            {
                Left = left,
                Right = right,
            };
    }

    private FormulaNode Operand(FormulaNode node)
    {
        var rewritten = Rewrite(node);
        return node is NameNode && !ReferenceEquals(rewritten, node) ? AsOperand(rewritten) : rewritten;
    }

    private CallNode Rewrite(CallNode call)
    {
        var binds = call.Name == "LET";
        var outer = _bound.Count;
        var arguments = new FormulaNode[call.Arguments.Count];
        var changed = false;
        for (var at = 0; at < arguments.Length; at++)
        {
            var argument = call.Arguments[at];
            var bindsHere = binds && at % 2 == 0 && at + 1 < arguments.Length && argument is NameNode;
            arguments[at] = bindsHere ? argument : Rewrite(argument);
            changed |= !ReferenceEquals(arguments[at], argument);

            // A name is bound from its own value's end on.
            if (binds && at % 2 == 1 && call.Arguments[at - 1] is NameNode name)
                _bound.Add(name.Name);
        }

        _bound.RemoveRange(outer, _bound.Count - outer);
        return changed ? call with { Arguments = arguments } : call;
    }
}
