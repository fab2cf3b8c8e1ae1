using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Layout;

/// <summary>Where a given stands in every practice workbook.</summary>
/// <param name="Given">The given.</param>
/// <param name="Tag">What the row's tag column says, a small roman numeral; unique on its sheet.</param>
/// <param name="DefinedName">The workbook's name for the cell.</param>
/// <param name="Address">The cell as dealt.</param>
public sealed record GivenPlace(Given Given, string Tag, string DefinedName, CellAddress Address);
