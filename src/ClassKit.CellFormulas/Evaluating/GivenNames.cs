using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>For formulas that stand in no workbook: names have given values.</summary>
internal sealed class GivenNames(Run run, IReadOnlyDictionary<string, CellValue> values) : NameSource
{
    public override bool IsUnknown(NameNode name) => Find(name) is null;

    public override FormulaValue Value(NameNode name)
    {
        if (Find(name) is { } value)
            return value;
        run.Reason ??= new Obstacle.NoName(name.Name);
        return CellError.Name;
    }

    public override FormulaValue Table(TableNode node) => run.Unsupported(new Obstacle.NoTables(node.Text));

    public override FormulaValue Spill(Reference anchor) => CellError.Reference;

    private CellValue? Find(NameNode name)
    {
        if (values.TryGetValue(name.Name, out var value))
            return value;
        foreach (var (known, other) in values)
        {
            if (string.Equals(known, name.Name, StringComparison.OrdinalIgnoreCase))
                return other;
        }

        return null;
    }
}
