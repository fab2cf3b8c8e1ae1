using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>
/// The one sign of arithmetic that was typed for another, where the formula is the key but for that: what the sign takes to itself follows
/// the order of operations, so that as a tree it may be quite another.
/// </summary>
/// <param name="sheet">The student's sheet.</param>
internal sealed class TypedSign(SheetTerms sheet)
{
    private static readonly BinaryOperator[] Four =
    [
        BinaryOperator.Add,
        BinaryOperator.Subtract,
        BinaryOperator.Multiply,
        BinaryOperator.Divide,
    ];

    /// <summary>The sign; null where there is none such.</summary>
    /// <param name="key">The key, over the exercise's names.</param>
    /// <param name="formula">The student's formula, over cells.</param>
    public KeyEdit.OtherOperation? Between(CellFormula key, FormulaShape formula)
    {
        foreach (var (whole, right, used) in Changed(WrittenTree.Bracketed(key.Shape)))
        {
            if (formula.IsWritten(sheet.Cells(CellFormula.OfWritten(whole).ToString()[1..])))
                return new(
                    FormulaShape.Text(right),
                    CellFormula.OfWritten(right with { Operator = used }).ToString()[1..],
                    right.Operator,
                    used
                );
        }
        return null;
    }

    /// <summary>The tree with another sign at each place in turn, what stands at that place, and the sign.</summary>
    private static IEnumerable<(FormulaNode Whole, BinaryNode Right, BinaryOperator Used)> Changed(FormulaNode node) =>
        node switch
        {
            BinaryNode binary => Four.Where(used => used != binary.Operator && Four.Contains(binary.Operator))
                .Select(used => ((FormulaNode)(binary with { Operator = used }), binary, used))
                .Concat(Changed(binary.Left).Select(at => ((FormulaNode)(binary with { Left = at.Whole }), at.Right, at.Used)))
                .Concat(Changed(binary.Right).Select(at => ((FormulaNode)(binary with { Right = at.Whole }), at.Right, at.Used))),
            GroupNode group => Changed(group.Inner).Select(at => ((FormulaNode)(group with { Inner = at.Whole }), at.Right, at.Used)),
            _ => [],
        };
}
