namespace ClassKit.Workbooks;

/// <summary>What the sheets of a workbook share while they are read.</summary>
/// <param name="Strings">The texts that cells refer to by number.</param>
/// <param name="Uses1904Dates">Which calendar turns dates into numbers.</param>
/// <param name="Budget">What may still be kept.</param>
internal sealed record SheetContext(IReadOnlyList<string> Strings, bool Uses1904Dates, ReadBudget Budget);
