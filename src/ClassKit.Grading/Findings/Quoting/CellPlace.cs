using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Grading.Findings.Quoting;

/// <summary>A cell, where a fact speaks of it.</summary>
/// <param name="Cell">Which one.</param>
/// <param name="IsOwnSheet">True if its sheet was not dealt, so that the sheet's name is the student's own.</param>
public sealed record CellPlace(CellAddress Cell, bool IsOwnSheet)
{
    internal CellPlace Under(IDisguise disguise) =>
        IsOwnSheet ? this with { Cell = Cell with { Sheet = disguise.OfTyped(Cell.Sheet) } } : this;
}
