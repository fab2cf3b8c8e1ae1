namespace ClassKit.Exercises.Layout;

/// <summary>
/// How a deal's exercises stand on their sheets: part of the deal, and read by whoever writes workbooks and by whoever finds cells in them
/// again.
/// </summary>
/// <param name="Columns">What stands in which column.</param>
/// <param name="FirstRow">The row of the first title on a sheet, from 1.</param>
/// <param name="OneSheet">True if all exercises stand below one another on one sheet, false if each has its own.</param>
public sealed record PracticePlan(PracticeColumns Columns, int FirstRow, bool OneSheet)
{
    /// <summary>
    /// What the sheets are called in a deal that calls them otherwise than one made now, by the exercises' ids; null where they are called
    /// as now.
    /// </summary>
    public IReadOnlyDictionary<string, string>? SheetsAsDealt { get; init; }

    /// <summary>Where the first sheet says whose workbook it is and what deal it is from.</summary>
    public StartPlan Start { get; init; } = StartPlan.Usual;

    /// <summary>A sheet for every exercise, from its first row and column on.</summary>
    public static PracticePlan Usual { get; } = new(PracticeColumns.Usual, 1, OneSheet: false);
}
