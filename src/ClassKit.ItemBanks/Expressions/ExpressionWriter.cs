using System.Diagnostics;
using System.Xml.Linq;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.ItemBanks.Vocabulary;

namespace ClassKit.ItemBanks.Expressions;

/// <summary>Writes a key as an expression of the standard, where the standard has what the key needs.</summary>
internal sealed class ExpressionWriter
{
    /// <summary>Functions with the same meaning over any number of arguments.</summary>
    private static readonly Dictionary<string, string> Plain = new(StringComparer.Ordinal)
    {
        ["SUM"] = "sum",
        ["PRODUCT"] = "product",
        ["MIN"] = "min",
        ["MAX"] = "max",
        ["AND"] = "and",
        ["OR"] = "or",
        ["NOT"] = "not",
    };

    /// <summary>Functions of one argument that the standard calls operators.</summary>
    private static readonly Dictionary<string, string> MathOperators = new(StringComparer.Ordinal)
    {
        ["ABS"] = "abs",
        ["LN"] = "ln",
        ["LOG10"] = "log",
        ["EXP"] = "exp",
        ["INT"] = "floor",
    };

    private readonly IReadOnlyDictionary<string, string> _variables;

    /// <summary>A writer that knows what each name of a key is called in the item.</summary>
    public ExpressionWriter(IReadOnlyDictionary<string, string> variables) => _variables = variables;

    /// <summary>The expression; null if something in it cannot be expressed.</summary>
    public XElement? Write(CellFormula formula) => Write(formula.Root);

    private XElement? Write(FormulaNode node) =>
        node switch
        {
            NumberNode number => Qti.Number(number.Value),
            LogicalNode logical => Qti.Of("base-value", Qti.With("base-type", "boolean"), logical.Value ? "true" : "false"),
            NameNode { Sheet: null } name => _variables.TryGetValue(name.Name, out var variable) ? Qti.Variable(variable) : null,
            GroupNode group => Write(group.Inner),
            PercentNode percent => Combine("divide", percent.Operand, Qti.Number(100)),
            PrefixNode { Operator: PrefixOperator.Minus } minus => Write(minus.Operand) is { } operand
                ? Qti.Of("subtract", Qti.Number(0), operand)
                : null,
            PrefixNode { Operator: PrefixOperator.Plus } plus => Write(plus.Operand),
            BinaryNode binary => Write(binary),
            CallNode call => Write(call),
            NameNode
            or PrefixNode
            or TextNode
            or ErrorNode
            or ArrayNode
            or ReferenceNode
            or SpillNode
            or TableNode
            or MissingNode
            or UnsupportedNode => null,
            _ => throw new UnreachableException($"It is not known whether the standard can express {node.GetType().Name}."),
        };

    private XElement? Write(BinaryNode binary) =>
        binary.Operator switch
        {
            BinaryOperator.Add => Combine("sum", binary),
            BinaryOperator.Subtract => Combine("subtract", binary),
            BinaryOperator.Multiply => Combine("product", binary),
            BinaryOperator.Divide => Combine("divide", binary),
            BinaryOperator.Power => Combine("power", binary),
            BinaryOperator.Less => Combine("lt", binary),
            BinaryOperator.LessOrEqual => Combine("lte", binary),
            BinaryOperator.Greater => Combine("gt", binary),
            BinaryOperator.GreaterOrEqual => Combine("gte", binary),
            _ => null,
        };

    private XElement? Write(CallNode call)
    {
        if (Plain.TryGetValue(call.Name, out var plain))
            return Combine(plain, [.. call.Arguments.Select(Write)]);
        if (call.Arguments.Count == 1 && MathOperators.TryGetValue(call.Name, out var name))
            return MathOperator(name, Write(call.Arguments[0]));
        if (call is { Name: "SQRT", Arguments.Count: 1 })
            return Combine("power", call.Arguments[0], Qti.Number(0.5));
        return null;
    }

    private static XElement? MathOperator(string name, XElement? operand) =>
        operand is null ? null : Qti.Of("math-operator", Qti.With("name", name), operand);

    private XElement? Combine(string name, BinaryNode binary) => Combine(name, [Write(binary.Left), Write(binary.Right)]);

    private XElement? Combine(string name, FormulaNode left, XElement right) => Combine(name, [Write(left), right]);

    private static XElement? Combine(string name, IReadOnlyList<XElement?> operands) =>
        operands.Count == 0 || operands.Any(operand => operand is null) ? null : Qti.Of(name, [.. operands]);
}
