using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Sheets;

/// <summary>What a workbook file says of one cell.</summary>
/// <param name="Stored">The value kept in the file; for a formula cell, what some program computed last, or blank if none did.</param>
/// <param name="Formula">The formula's text without the leading <c>=</c>, as the file stores it; null for a cell without one. Shared
/// formulas come already shifted to this cell.</param>
/// <param name="ArrayRange">For an array formula, the range it fills, such as <c>B2:B9</c>; else null.</param>
public sealed record CellContent(CellValue Stored, string? Formula = null, string? ArrayRange = null);
