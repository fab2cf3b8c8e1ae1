namespace ClassKit.Workbooks.Filling;

/// <summary>Deletes a defined name of the workbook.</summary>
/// <param name="Name">Which.</param>
public sealed record DeleteName(string Name) : WorkbookEdit;
