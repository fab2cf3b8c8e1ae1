using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>An interpreter for formulas that stand in no workbook: names have given values, and there are no cells.</summary>
internal sealed class NamedInterpreter(IReadOnlyDictionary<string, CellValue> names) : Interpreter(EvaluationLimits.Default, DateSystem.From1900)
{
    public override (int Row, int Column)? Place => null;

    public FormulaValue Compute(CellFormula formula)
    {
        Meter.Reset(long.MaxValue);
        return Within(() => Operand(formula.Root), CellError.Value);
    }

    public override CellValue Read(int sheet, int row, int column) => CellValue.FromError(CellError.Reference);

    public override Area? Used(Area area) => null;

    public override void Collect(Area area, List<CellValue> into) => into.Add(CellValue.FromError(CellError.Reference));

    public override int SheetIndex(string? name)
    {
        Reason ??= "there are no cells to refer to here, only names";
        return -1;
    }

    protected override bool IsUnknown(NameNode name) => Find(name) is null;

    private CellValue? Find(NameNode name)
    {
        if (names.TryGetValue(name.Name, out var value)) return value;
        foreach (var (known, other) in names)
        {
            if (string.Equals(known, name.Name, StringComparison.OrdinalIgnoreCase)) return other;
        }

        return null;
    }

    protected override FormulaValue Name(NameNode name)
    {
        if (Find(name) is { } value) return value;
        Reason ??= $"nothing is called {name.Name}";
        return CellError.Name;
    }

    protected override FormulaValue Spill(Reference anchor) => CellError.Reference;
}
