namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>What a workbook says of itself as a document. Any program may write anything there; it is a hint and never a proof.</summary>
/// <param name="Creator">Who made it first.</param>
/// <param name="LastModifiedBy">Who saved it last.</param>
/// <param name="Created">When it was made, in universal time.</param>
/// <param name="Modified">
/// When it was saved last: in universal time, or of a kind that is not specified where it may be what some clock showed.
/// </param>
public sealed record DocumentProperties(string? Creator, string? LastModifiedBy, DateTime? Created, DateTime? Modified)
{
    /// <summary>Those of a workbook that says nothing.</summary>
    public static DocumentProperties None { get; } = new(null, null, null, null);
}
