namespace ClassKit.CellFormulas.Sheets;

/// <summary>A name defined in a workbook.</summary>
/// <param name="Name">The name; compared without regard to letter case.</param>
/// <param name="Sheet">The sheet whose formulas alone see it; null for the whole workbook.</param>
/// <param name="Formula">What the name stands for, a formula text without <c>=</c>, usually one absolute reference.</param>
public sealed record DefinedName(string Name, string? Sheet, string Formula);
