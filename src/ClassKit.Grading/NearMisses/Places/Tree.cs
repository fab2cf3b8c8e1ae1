using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Grading.NearMisses.Places;

/// <summary>Makes nodes of formulas that nobody typed.</summary>
internal static class Tree
{
    public static NumberNode Number(double value) => new(value, default);

    public static NameNode Name(string id) => new(null, id, default);

    public static BinaryNode Binary(BinaryOperator op, FormulaNode left, FormulaNode right) => new(op, left, right, default);

    public static CallNode Call(string function, params FormulaNode[] arguments) => new(function, arguments, default);

    public static bool IsOne(FormulaNode node) => node is NumberNode { Value: 1 };

    public static bool IsArithmetic(BinaryOperator op) => op is >= BinaryOperator.Power and <= BinaryOperator.Subtract;

    /// <summary>How many things are done in a tree: operations, signs and functions.</summary>
    public static int Operations(FormulaNode node) =>
        (node is BinaryNode or CallNode or PrefixNode { Operator: PrefixOperator.Minus } ? 1 : 0) + node.Children().Sum(Operations);

    /// <summary>
    /// True if a tree does one thing with a name: takes it together with what is itself no more than one step, or puts it into a function
    /// with nothing else of the sheet.
    /// </summary>
    public static bool IsOneStepFrom(FormulaNode tree, string id) =>
        tree switch
        {
            BinaryNode { Left: var left, Right: var right } => (Is(left, id) && Operations(right) <= 1)
                || (Is(right, id) && Operations(left) <= 1),
            _ => tree.Children().Any(child => Is(child, id))
                && tree.Children().All(child => Is(child, id) || child is NumberNode or PrefixNode { Operand: NumberNode }),
        };

    private static bool Is(FormulaNode node, string id) =>
        node is NameNode { Name: var name } && string.Equals(name, id, StringComparison.OrdinalIgnoreCase);

    /// <summary>How often a name stands in a tree.</summary>
    public static int Times(FormulaNode node, string id) => Is(node, id) ? 1 : node.Children().Sum(child => Times(child, id));

    /// <summary>The formula of a node, without <c>=</c>.</summary>
    public static string Text(FormulaNode node) => CellFormula.OfTree(node).ToString()[1..];
}
