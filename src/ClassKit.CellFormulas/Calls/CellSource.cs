using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Calls;

/// <summary>Where formulas find cells.</summary>
internal abstract class CellSource
{
    /// <summary>Row and column of the cell whose formula is evaluated; null if it is in no cell.</summary>
    public abstract (int Row, int Column)? Place { get; }

    /// <summary>The value of a cell.</summary>
    public abstract CellValue Read(int sheet, int row, int column);

    /// <summary>The part of an area outside of which all is blank; null if all of it is.</summary>
    public abstract Area? Used(Area area);

    /// <summary>The filled cells of an area in reading order.</summary>
    public abstract void Collect(Area area, List<CellValue> into);

    /// <summary>The sheet's index, or -1.</summary>
    public abstract int SheetIndex(string? name);

    /// <summary>How many sheets there are.</summary>
    public virtual int SheetCount => 1;

    /// <summary>The formula in a cell, without <c>=</c>; null if it has none.</summary>
    public virtual string? FormulaText(int sheet, int row, int column) => null;

    /// <summary>True for a row that does not show, or only if a filter is the reason.</summary>
    public virtual bool IsHidden(int sheet, int row, bool byFilterOnly) => false;

    /// <summary>The values of an area read before; null if they have to be read.</summary>
    public virtual ArrayValue? Recall(Area area) => null;

    /// <summary>Keeps the values of an area for the next who wants them.</summary>
    public virtual void Remember(Area area, ArrayValue values) { }

    /// <summary>Asks for another try with a shorter stack; false if that cannot help.</summary>
    public virtual bool Deepen() => false;
}
