using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Layout;

/// <summary>Where the answer to a part stands in every practice workbook.</summary>
/// <param name="Part">The part.</param>
/// <param name="Tag">What the row's tag column says, such as <c>1a</c>; unique in the workbook.</param>
/// <param name="DefinedName">The workbook's name for the cell.</param>
/// <param name="Address">The cell as dealt.</param>
public sealed record AnswerPlace(Part Part, string Tag, string DefinedName, CellAddress Address);
