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

    /// <summary>How often a name stands in a tree.</summary>
    public static int Times(FormulaNode node, string id) =>
        node is NameNode { Name: var name } && string.Equals(name, id, StringComparison.OrdinalIgnoreCase)
            ? 1
            : node.Children().Sum(child => Times(child, id));

    /// <summary>The formula of a node, without <c>=</c>.</summary>
    public static string Text(FormulaNode node) => CellFormula.OfTree(node).ToString()[1..];
}
