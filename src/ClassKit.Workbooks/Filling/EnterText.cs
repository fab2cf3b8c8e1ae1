using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Workbooks.Filling;

/// <summary>Types a text into a cell, such as <c>182 g</c>.</summary>
/// <param name="Cell">Where.</param>
/// <param name="Text">The text; never taken for a number or a formula.</param>
public sealed record EnterText(CellAddress Cell, string Text) : WorkbookEdit;
