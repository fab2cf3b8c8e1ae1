using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions.Units;

/// <summary>CONVERT.</summary>
internal static class Conversion
{
    public static readonly FunctionRow[] Rows = [new("CONVERT", 3, 3, "VVV", Convert)];

    private static FormulaValue Convert(Call call)
    {
        var (number, from, to) = (call.Number(0), call.Text(1), call.Text(2));
        if (call.Failed)
            return call.Failure;
        if (UnitTable.Find(from) is not var (source, sourceMultiple) || UnitTable.Find(to) is not var (target, targetMultiple))
            return CellError.NotAvailable;
        if (source.Kind != target.Kind)
            return CellError.NotAvailable;
        if (source.Symbol == target.Symbol && sourceMultiple == targetMultiple)
            return number;
        if (source.Zero == target.Zero)
            return number * (source.Factor * sourceMultiple) / (target.Factor * targetMultiple);
        return (number * source.Factor * sourceMultiple + source.Zero - target.Zero) / (target.Factor * targetMultiple);
    }
}
