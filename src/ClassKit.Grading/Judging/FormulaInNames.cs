using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Writes a student's formula over the names of the exercise: what stands in cells of their own is worked in, so that it can be tried on
/// anybody's numbers.
/// </summary>
/// <param name="workbook">The workbook.</param>
/// <param name="names">What the cells of givens and answers are called.</param>
/// <param name="parses">Parses that the class has in common.</param>
internal sealed class FormulaInNames(WorkbookSnapshot workbook, IReadOnlyDictionary<CellAddress, string> names, FormulaParses parses)
{
    private const int MostCells = 60;
    private const int MostDepth = 8;

    private int _cells;

    /// <summary>True if something else of the workbook was looked at than the formula and the cells of givens and answers.</summary>
    public bool LookedAround { get; private set; }

    /// <summary>The formula of a cell; null where it cannot be written like this.</summary>
    public CellFormula? Of(CellAddress cell) =>
        workbook.Find(cell)?.Formula is { } text
        && parses.Of(text).Formula is { } formula
        && Written(formula.Root, cell.Sheet, 0) is { } root
            ? CellFormula.OfTree(root)
            : null;

    private FormulaNode? Written(FormulaNode node, string sheet, int depth) =>
        node switch
        {
            _ when depth > MostDepth => null,
            NumberNode => node,
            ReferenceNode { Last: null } reference => OfCell(
                new(reference.Sheet ?? sheet, reference.First.Row, reference.First.Column),
                depth
            ),
            NameNode { Sheet: null } name
                when Defined(name.Name) is { } defined
                    && parses.Of(defined.Formula).Formula is { Root: ReferenceNode { Last: null } place } => Written(
                place,
                sheet,
                depth + 1
            ),
            GroupNode group => Written(group.Inner, sheet, depth),
            PercentNode percent => Written(percent.Operand, sheet, depth) is { } operand ? percent with { Operand = operand } : null,
            PrefixNode { Operator: not PrefixOperator.Intersect } prefix => Written(prefix.Operand, sheet, depth) is { } operand
                ? prefix with
                {
                    Operand = operand,
                }
                : null,
            BinaryNode { Operator: > BinaryOperator.Union and not BinaryOperator.Concatenate } binary => Written(binary.Left, sheet, depth)
                is { } left
            && Written(binary.Right, sheet, depth) is { } right
                ? binary with
                {
                    Left = left,
                    Right = right,
                }
                : null,
            CallNode { Name: not "LET" } call => Arguments(call, sheet, depth) is { } arguments
                ? call with
                {
                    Arguments = arguments,
                }
                : null,
            _ => null,
        };

    private FormulaNode? OfCell(CellAddress cell, int depth)
    {
        if (++_cells > MostCells)
            return null;
        if (names.TryGetValue(cell, out var name))
            return new NameNode(null, name, default);
        LookedAround = true;
        return workbook.Find(cell) switch
        {
            { Formula: { } text } => parses.Of(text).Formula is { } formula ? Written(formula.Root, cell.Sheet, depth + 1) : null,
            { Stored: { IsNumber: true, Number: >= 0 and var number } } => new NumberNode(number, default),
            _ => null,
        };
    }

    private DefinedName? Defined(string name)
    {
        LookedAround = true;
        return workbook.FindName(name);
    }

    /// <summary>A rectangle among the arguments becomes its cells that hold something, as SUM and its like read it.</summary>
    private List<FormulaNode>? Arguments(CallNode call, string sheet, int depth)
    {
        var arguments = new List<FormulaNode>();
        foreach (var argument in call.Arguments)
        {
            LookedAround |= argument is ReferenceNode { Last: not null };
            List<FormulaNode?> written = argument is ReferenceNode { Last: { } last } range
                ?
                [
                    .. Cells(range.Sheet ?? sheet, range.First, last)
                        .Where(cell => names.ContainsKey(cell) || workbook.Find(cell) is not null)
                        .Select(cell => OfCell(cell, depth)),
                ]
                : [Written(argument, sheet, depth)];
            if (written.Contains(null))
                return null;
            arguments.AddRange(written.OfType<FormulaNode>());
        }
        return arguments;
    }

    private static IEnumerable<CellAddress> Cells(string sheet, Corner first, Corner last) =>
        from row in Enumerable.Range(Math.Min(first.Row, last.Row), Math.Min(Math.Abs(first.Row - last.Row) + 1, MostCells))
        from column in Enumerable.Range(Math.Min(first.Column, last.Column), Math.Min(Math.Abs(first.Column - last.Column) + 1, MostCells))
        where row > 0 && column > 0
        select new CellAddress(sheet, row, column);
}
