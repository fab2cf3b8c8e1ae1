using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Randomness;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>
/// Writes a right formula as another person would, by rules of arithmetic that change nothing: turned, spread out, multiplied by the
/// inverse, added in halves.
/// </summary>
internal static class OtherWriting
{
    /// <summary>One of the ways, another one each time.</summary>
    public static CellFormula Of(CellFormula key, SeededDraws draws) => CellFormula.OfTree(Written(key.Shape, draws));

    private static FormulaNode Written(FormulaNode node, SeededDraws draws) =>
        node switch
        {
            BinaryNode { Operator: >= BinaryOperator.Multiply and <= BinaryOperator.Subtract } binary => Turned(
                binary with
                {
                    Left = Written(binary.Left, draws),
                    Right = Written(binary.Right, draws),
                },
                draws.Below(8)
            ),
            PrefixNode { Operator: PrefixOperator.Minus } minus => minus with { Operand = Written(minus.Operand, draws) },
            NameNode name => draws.Below(12) switch
            {
                0 => Binary(
                    BinaryOperator.Add,
                    Binary(BinaryOperator.Divide, name, Number(2)),
                    Binary(BinaryOperator.Divide, name, Number(2))
                ),
                1 => Binary(BinaryOperator.Divide, Binary(BinaryOperator.Multiply, name, Number(100)), Number(100)),
                2 => Binary(
                    BinaryOperator.Subtract,
                    Binary(BinaryOperator.Multiply, Number(3), name),
                    Binary(BinaryOperator.Multiply, Number(2), name)
                ),
                _ => name,
            },
            // What rounds up to whole packets is left alone: at the very packet, noise would make it one more.
            _ => node,
        };

    private static FormulaNode Turned(BinaryNode at, int way) =>
        (at.Operator, way) switch
        {
            (BinaryOperator.Multiply or BinaryOperator.Add, 0 or 1) => at with { Left = at.Right, Right = at.Left },
            (BinaryOperator.Multiply, 2) => Binary(BinaryOperator.Divide, at.Left, Binary(BinaryOperator.Divide, Number(1), at.Right)),
            (BinaryOperator.Multiply, 3 or 4) when at.Left is BinaryNode { Operator: BinaryOperator.Add or BinaryOperator.Subtract } sum =>
                sum with
                {
                    Left = Binary(BinaryOperator.Multiply, sum.Left, at.Right),
                    Right = Binary(BinaryOperator.Multiply, sum.Right, at.Right),
                },
            (BinaryOperator.Multiply, 3 or 4) when at.Right is BinaryNode { Operator: BinaryOperator.Add or BinaryOperator.Subtract } sum =>
                sum with
                {
                    Left = Binary(BinaryOperator.Multiply, at.Left, sum.Left),
                    Right = Binary(BinaryOperator.Multiply, at.Left, sum.Right),
                },
            (BinaryOperator.Divide, 0 or 1) => Binary(BinaryOperator.Multiply, at.Left, Binary(BinaryOperator.Divide, Number(1), at.Right)),
            (BinaryOperator.Divide, 2) => Binary(
                BinaryOperator.Multiply,
                at.Left,
                Binary(BinaryOperator.Power, at.Right, Minus(Number(1)))
            ),
            (BinaryOperator.Divide, 3) => Binary(
                BinaryOperator.Divide,
                Binary(BinaryOperator.Multiply, Number(2), at.Left),
                Binary(BinaryOperator.Multiply, Number(2), at.Right)
            ),
            (BinaryOperator.Divide, 4) when at.Left is BinaryNode { Operator: BinaryOperator.Add or BinaryOperator.Subtract } sum =>
                sum with
                {
                    Left = Binary(BinaryOperator.Divide, sum.Left, at.Right),
                    Right = Binary(BinaryOperator.Divide, sum.Right, at.Right),
                },
            (BinaryOperator.Subtract, 0) => Minus(Binary(BinaryOperator.Subtract, at.Right, at.Left)),
            (BinaryOperator.Subtract, 1) => Binary(BinaryOperator.Add, Minus(at.Right), at.Left),
            (BinaryOperator.Add, 2) => Binary(BinaryOperator.Subtract, at.Left, Minus(at.Right)),
            _ => at,
        };

    private static BinaryNode Binary(BinaryOperator op, FormulaNode left, FormulaNode right) => new(op, left, right, default);

    private static PrefixNode Minus(FormulaNode node) => new(PrefixOperator.Minus, node, default);

    private static NumberNode Number(double value) => new(value, default);
}
