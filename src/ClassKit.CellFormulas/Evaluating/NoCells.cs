using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>For formulas that stand in no workbook: there are no cells.</summary>
internal sealed class NoCells(Run run) : CellSource
{
    public override (int Row, int Column)? Place => null;

    public override CellValue Read(int sheet, int row, int column) => CellValue.FromError(CellError.Reference);

    public override Area? Used(Area area) => null;

    public override void Collect(Area area, List<CellValue> into) => into.Add(CellValue.FromError(CellError.Reference));

    public override int SheetIndex(string? name)
    {
        run.Reason ??= new Obstacle.NoCells();
        return -1;
    }
}
