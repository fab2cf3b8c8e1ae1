using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Workbooks.Filling;

/// <summary>Puts a formula into a cell.</summary>
/// <param name="Cell">Where.</param>
/// <param name="Formula">The formula's text, with or without its leading <c>=</c>.</param>
public sealed record EnterFormula(CellAddress Cell, string Formula) : WorkbookEdit;
