using System.Runtime.CompilerServices;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// Computes cells of a workbook on several inputs at once, as <see cref="WorkbookEvaluator"/> does on one after the other, and quicker:
/// arithmetic is done for all inputs at each node, and each cell once. Not to be used from several threads at once.
/// </summary>
/// <remarks>
/// It knows numbers, single cells, names of them and the operators of arithmetic, which is what students write; of anything else it says
/// that it does not know.
/// </remarks>
public sealed class WorkbookColumns
{
    /// <summary>Longer chains of cells are for the evaluator, which follows them without going deeper.</summary>
    private const int Deepest = 50;

    private readonly PreparedWorkbook _workbook;
    private readonly int _count;
    private readonly Func<long, bool> _maySpend;
    private readonly Dictionary<CellKey, double[]?> _known;
    private long _steps;
    private int _depth;

    /// <param name="workbook">The workbook.</param>
    /// <param name="count">How many inputs there are.</param>
    /// <param name="inputs">For some cells, what stands there on each input.</param>
    /// <param name="maySpend">Counts steps; false once there may be no more.</param>
    internal WorkbookColumns(
        PreparedWorkbook workbook,
        int count,
        IEnumerable<KeyValuePair<CellAddress, double[]>> inputs,
        Func<long, bool> maySpend
    )
    {
        (_workbook, _count, _maySpend) = (workbook, count, maySpend);
        // With room for the answers that are asked for: a table that grows is copied.
        _known = new(2 * (inputs.TryGetNonEnumeratedCount(out var cells) ? cells : 0));
        foreach (var (cell, numbers) in inputs)
        {
            if (workbook.FindSheet(cell.Sheet) is var sheet and >= 0)
                _known[new(sheet, cell.Row, cell.Column)] = Array.TrueForAll(numbers, double.IsFinite) ? numbers : null;
        }
    }

    /// <summary>
    /// What a cell comes to on every input, in their order; null where it, or anything that it needs, is no plain arithmetic or comes to no
    /// number.
    /// </summary>
    public IReadOnlyList<double>? Numbers(CellAddress cell)
    {
        _steps = 0;
        var numbers = _workbook.FindSheet(cell.Sheet) is var sheet and >= 0 ? Of(new CellKey(sheet, cell.Row, cell.Column)) : null;
        return _maySpend(_steps) ? numbers : null;
    }

    private double[]? Of(CellKey key)
    {
        if (_known.TryGetValue(key, out var known))
            return known;
        // While it is computed it is not known, so that a circle ends here.
        _known[key] = null;
        return _known[key] = Computed(key);
    }

    private double[]? Computed(CellKey key)
    {
        var sheet = _workbook.Sheets[key.Sheet];
        if (sheet.Arrays.Length > 0 || sheet.Snapshot.Cells.GetValueOrDefault((key.Row, key.Column)) is not { ArrayRange: null } content)
            return null;
        if (content.Formula is null)
            return content.Stored.IsNumber ? Constant(content.Stored.Number) : null;
        if (_depth == Deepest || _workbook.Parse(key, content.Formula).Formula is not { } formula)
            return null;
        _depth++;
        var numbers = Of(formula.Root, key.Sheet);
        _depth--;
        return numbers;
    }

    private double[]? Of(FormulaNode node, int sheet)
    {
        _steps += _count;
        if (!RuntimeHelpers.TryEnsureSufficientExecutionStack())
            return null;
        return node switch
        {
            NumberNode number => Constant(number.Value),
            ReferenceNode { Last: null } reference => (reference.Sheet is null ? sheet : _workbook.FindSheet(reference.Sheet))
                is var on
                    and >= 0
                ? Of(new CellKey(on, reference.First.Row, reference.First.Column))
                : null,
            NameNode name => _workbook.Resolve(sheet, name).Cell is { } cell ? Of(cell) : null,
            BinaryNode { Operator: >= BinaryOperator.Power and <= BinaryOperator.Subtract } binary => Of(binary.Left, sheet) is { } left
            && Of(binary.Right, sheet) is { } right
                ? Each(left, right, binary.Operator)
                : null,
            GroupNode group => Of(group.Inner, sheet),
            PrefixNode { Operator: PrefixOperator.Plus } plus => Of(plus.Operand, sheet),
            PrefixNode { Operator: PrefixOperator.Minus } minus => Of(minus.Operand, sheet) is { } operand
                ? Array.ConvertAll(operand, Operators.Negate)
                : null,
            PercentNode percent => Of(percent.Operand, sheet) is { } operand ? Array.ConvertAll(operand, Operators.Percent) : null,
            _ => null,
        };
    }

    private double[]? Constant(double number)
    {
        if (!double.IsFinite(number))
            return null;
        var numbers = new double[_count];
        Array.Fill(numbers, number);
        return numbers;
    }

    private static double[]? Each(double[] left, double[] right, BinaryOperator op)
    {
        var numbers = new double[left.Length];
        for (var at = 0; at < numbers.Length; at++)
        {
            numbers[at] = Operators.Number(op, left[at], right[at]);
            if (!double.IsFinite(numbers[at]))
                return null;
        }
        return numbers;
    }
}
