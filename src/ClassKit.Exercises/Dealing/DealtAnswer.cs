using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Exercises.Dealing;

/// <summary>An answer cell as dealt to one student.</summary>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Part">The part's id.</param>
/// <param name="DefinedName">The workbook's name for the cell.</param>
/// <param name="Address">The cell as dealt.</param>
/// <param name="Tag">What the first column of its row says, to find it by if the name is lost.</param>
/// <param name="Expected">What the key gives for this student's variant.</param>
public sealed record DealtAnswer(string Exercise, string Part, string DefinedName, CellAddress Address, string Tag, double Expected);
