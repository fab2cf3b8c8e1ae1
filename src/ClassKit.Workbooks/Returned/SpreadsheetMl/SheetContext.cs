using ClassKit.CellFormulas.Values;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>What the sheets of a workbook share while they are read.</summary>
/// <param name="Strings">The texts that cells refer to by number.</param>
/// <param name="Dates">Which calendar turns dates into numbers.</param>
/// <param name="Budget">What may still be kept.</param>
internal sealed record SheetContext(IReadOnlyList<string> Strings, DateSystem Dates, ReadBudget Budget);
