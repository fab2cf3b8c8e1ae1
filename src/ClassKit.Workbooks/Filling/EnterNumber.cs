using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Workbooks.Filling;

/// <summary>Types a number into a cell, a given's as well.</summary>
/// <param name="Cell">Where.</param>
/// <param name="Number">The number as stored: 65 % is 0.65.</param>
public sealed record EnterNumber(CellAddress Cell, double Number) : WorkbookEdit;
