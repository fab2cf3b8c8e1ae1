using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>What names mean in a workbook, as seen from the cell whose formula is evaluated.</summary>
/// <param name="workbook">Which.</param>
/// <param name="run">The evaluation.</param>
/// <param name="path">On whose last cell the formula stands.</param>
/// <param name="open">The names being computed.</param>
/// <param name="read">Reads a cell.</param>
/// <param name="afresh">Evaluates a name's formula, operators working element by element.</param>
internal sealed class WorkbookNames(
    PreparedWorkbook workbook,
    Run run,
    CellPath path,
    NamesOpen open,
    Func<CellKey, CellValue> read,
    Func<FormulaNode, FormulaValue> afresh
) : NameSource
{
    private readonly TableReferences _tables = new(workbook, run);

    public override bool HasMacros => workbook.Workbook.HasMacros;

    public override (int Rows, int Columns) Offset => open.Offset;

    public override bool TryCell(NameNode name, out CellValue value)
    {
        value = default;
        if (open.Any || workbook.Resolve(path.Last.Sheet, name).Cell is not { } cell)
            return false;
        value = read(cell);
        return true;
    }

    public override bool IsUnknown(NameNode name) =>
        workbook.FindTarget(path.Last.Sheet, name) is { Problem: not null, Error: CellError.Name };

    public override FormulaValue Value(NameNode name)
    {
        // Only in formulas of cells does a name always mean the same; names in names are looked up as seen from the cell.
        var target = open.Any ? workbook.FindTarget(path.Last.Sheet, name) : workbook.Resolve(path.Last.Sheet, name);
        if (target.Problem is { } problem)
        {
            run.Reason ??= problem;
            return target.Error;
        }

        if (target.Formula is not { } formula)
            return run.Unsupported(new Obstacle.NameWithoutFormula(name.Name));
        if (open.IsEndless(formula))
        {
            run.Reason ??= new Obstacle.NameOfItself(name.Name);
            return CellError.Reference;
        }

        // Relative references in a name are written as seen from A1.
        return open.Within(formula, (path.Last.Row - 1, path.Last.Column - 1), () => afresh(formula.Root));
    }

    public override FormulaValue Table(TableNode node) => _tables.Cells(node, path.Last);

    public override FormulaValue Spill(Reference anchor)
    {
        var cell = anchor.First;
        var sheet = workbook.Sheets[cell.Sheet];
        foreach (var (area, master) in sheet.Arrays)
        {
            if (master == new CellKey(cell.Sheet, cell.Top, cell.Left))
                return new Reference(area);
        }

        var isAlone = sheet.Snapshot.Cells.GetValueOrDefault((cell.Top, cell.Left)) is { ArrayRange: not null };
        return isAlone ? anchor : CellError.Reference;
    }
}
