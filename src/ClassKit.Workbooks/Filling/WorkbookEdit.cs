namespace ClassKit.Workbooks.Filling;

/// <summary>One thing that a student does to a workbook; see <see cref="WorkbookFiller"/>.</summary>
public abstract record WorkbookEdit;
