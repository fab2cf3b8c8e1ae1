using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Sheets;

/// <summary>A workbook's cells and names at rest: what was read from a file, never changed afterwards.</summary>
/// <param name="Sheets">The sheets in tab order.</param>
/// <param name="Names">The defined names.</param>
/// <param name="Dates">From which day dates are counted.</param>
public sealed record WorkbookSnapshot(
    IReadOnlyList<SheetSnapshot> Sheets,
    IReadOnlyList<DefinedName> Names,
    DateSystem Dates = DateSystem.From1900
)
{
    /// <summary>The tables of all sheets.</summary>
    public IReadOnlyList<TableSnapshot> Tables { get; init; } = [];

    /// <summary>True if macros come with the workbook, so that a function we do not know may be one of them.</summary>
    public bool HasMacros { get; init; }

    /// <summary>
    /// True if the workbook computes circles by going round them a number of times instead of refusing them (ECMA-376 Part 1, 18.2.2,
    /// iterate).
    /// </summary>
    public bool IteratesCircles { get; init; }

    /// <summary>The sheet of that name in any letter case, or null.</summary>
    public SheetSnapshot? FindSheet(string name) =>
        Sheets.FirstOrDefault(sheet => string.Equals(sheet.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>What the file says of a cell; null for an empty one or an unknown sheet.</summary>
    public CellContent? Find(CellAddress address) => FindSheet(address.Sheet)?.Cells.GetValueOrDefault((address.Row, address.Column));

    /// <summary>The workbook-wide name, in any letter case, or null.</summary>
    public DefinedName? FindName(string name) =>
        Names.FirstOrDefault(defined => defined.Sheet is null && string.Equals(defined.Name, name, StringComparison.OrdinalIgnoreCase));
}
