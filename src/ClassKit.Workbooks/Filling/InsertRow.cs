namespace ClassKit.Workbooks.Filling;

/// <summary>Inserts an empty row; formulas and names follow what they refer to.</summary>
/// <param name="Sheet">On which sheet.</param>
/// <param name="AboveRow">Above which row, counted when the edit's turn comes.</param>
public sealed record InsertRow(string Sheet, int AboveRow) : WorkbookEdit;
