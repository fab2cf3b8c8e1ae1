using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// What the names in a formula stand for: defined names, tables, what array formulas fill, and functions that are not ours.
/// </summary>
internal abstract class NameSource
{
    /// <summary>True if functions may come from macros.</summary>
    public virtual bool HasMacros => false;

    /// <summary>How far the references of a defined name are moved from where they are written.</summary>
    public virtual (int Rows, int Columns) Offset => default;

    /// <summary>What a name that LET does not bind stands for.</summary>
    public abstract FormulaValue Value(NameNode name);

    /// <summary>True for a name that stands for nothing.</summary>
    public abstract bool IsUnknown(NameNode name);

    /// <summary>The value of a name that stands for one cell; false for any other name.</summary>
    public virtual bool TryCell(NameNode name, out CellValue value)
    {
        value = default;
        return false;
    }

    /// <summary>The cells of a part of a table.</summary>
    public abstract FormulaValue Table(TableNode node);

    /// <summary>What the formula in a cell fills.</summary>
    public abstract FormulaValue Spill(Reference anchor);
}
