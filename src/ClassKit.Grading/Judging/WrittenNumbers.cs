using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging;

/// <summary>The numbers that a formula has written in it; those within cell references and longer numbers are none.</summary>
internal static class WrittenNumbers
{
    private const double PerCent = 0.01;

    /// <summary>True if a formula has a number written in it, <c>65%</c> for 0.65 too.</summary>
    public static bool Hold(CellFormula formula, double number) => In(formula.Root).Any(written => Near.Computed.Same(written, number));

    private static IEnumerable<double> In(FormulaNode node) =>
        node switch
        {
            NumberNode number => [number.Value],
            PercentNode { Operand: NumberNode number } => [number.Value * PerCent],
            _ => node.Children().SelectMany(In),
        };
}
