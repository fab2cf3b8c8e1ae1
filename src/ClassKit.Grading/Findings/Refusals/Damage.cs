using ClassKit.CellFormulas.Sheets;
using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.Findings.Refusals;

/// <summary>What is broken in a returned workbook.</summary>
public abstract record Damage
{
    private Damage() { }

    internal virtual Damage Under(IDisguise disguise) => this;

    /// <summary>The archive that it is contradicts itself.</summary>
    public sealed record Archive : Damage;

    /// <summary>A part of it cannot be unpacked.</summary>
    /// <param name="Part">Which.</param>
    public sealed record Unpacking(string Part) : Damage;

    /// <summary>A part of it does not match its checksum.</summary>
    /// <param name="Part">Which.</param>
    public sealed record Checksum(string Part) : Damage;

    /// <summary>A part of it is empty, or starts with a document type.</summary>
    /// <param name="Part">Which.</param>
    public sealed record NoXml(string Part) : Damage;

    /// <summary>A part of it is no well-formed XML.</summary>
    /// <param name="Part">Which.</param>
    /// <param name="Line">In which line, from 1.</param>
    /// <param name="Column">At which character of it, from 1.</param>
    public sealed record BrokenXml(string Part, int Line, int Column) : Damage;

    /// <summary>It lists no sheets.</summary>
    /// <param name="Part">The part that should.</param>
    public sealed record NoSheets(string Part) : Damage;

    /// <summary>It lists a sheet without saying where it lies.</summary>
    /// <param name="Sheet">The sheet.</param>
    public sealed record NowhereSheet(Quotation Sheet) : Damage
    {
        internal override Damage Under(IDisguise disguise) => new NowhereSheet(Sheet.Under(disguise));
    }

    /// <summary>It lists a sheet whose part is missing.</summary>
    /// <param name="Sheet">The sheet.</param>
    /// <param name="Part">The part.</param>
    public sealed record MissingSheet(Quotation Sheet, string Part) : Damage
    {
        internal override Damage Under(IDisguise disguise) => this with { Sheet = Sheet.Under(disguise) };
    }

    /// <summary>A sheet has a row with an impossible number.</summary>
    /// <param name="Sheet">The sheet.</param>
    /// <param name="Number">What stands there.</param>
    public sealed record RowNumber(Quotation Sheet, Quotation Number) : Damage
    {
        internal override Damage Under(IDisguise disguise) => new RowNumber(Sheet.Under(disguise), Number.Under(disguise));
    }

    /// <summary>A sheet has a cell with an impossible address.</summary>
    /// <param name="Sheet">The sheet.</param>
    /// <param name="Address">What stands there.</param>
    public sealed record CellName(Quotation Sheet, Quotation Address) : Damage
    {
        internal override Damage Under(IDisguise disguise) => new CellName(Sheet.Under(disguise), Address.Under(disguise));
    }

    /// <summary>A sheet has cells beyond its last row or column.</summary>
    /// <param name="Sheet">The sheet.</param>
    public sealed record BeyondSheet(Quotation Sheet) : Damage
    {
        internal override Damage Under(IDisguise disguise) => new BeyondSheet(Sheet.Under(disguise));
    }

    /// <summary>A cell shares a formula that is not there.</summary>
    /// <param name="Cell">The cell, without its sheet.</param>
    public sealed record SharedFormula(string Cell) : Damage;

    /// <summary>A cell refers to a text that is not there.</summary>
    /// <param name="Cell">The cell.</param>
    public sealed record MissingText(CellAddress Cell) : Damage
    {
        internal override Damage Under(IDisguise disguise) => new MissingText(Cell with { Sheet = disguise.OfTyped(Cell.Sheet) });
    }

    /// <summary>Something else stands where a number or a date should be.</summary>
    /// <param name="Sheet">The sheet.</param>
    /// <param name="Cell">The cell within it; empty where that is not known.</param>
    /// <param name="Text">What stands there.</param>
    /// <param name="IsDate">True for a date.</param>
    public sealed record NoNumber(Quotation Sheet, string Cell, Quotation Text, bool IsDate) : Damage
    {
        internal override Damage Under(IDisguise disguise) => this with { Sheet = Sheet.Under(disguise), Text = Text.Under(disguise) };
    }
}
