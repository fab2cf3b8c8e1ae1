namespace ClassKit.Workbooks;

/// <summary>Deletes a defined name of the workbook.</summary>
/// <param name="Name">Which.</param>
public sealed record DeleteName(string Name) : WorkbookEdit;
