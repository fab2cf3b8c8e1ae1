using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Exercises.Dealing;

/// <summary>A given as dealt to one student, and where it stands in the workbook.</summary>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Name">The given's id.</param>
/// <param name="DefinedName">The workbook's name for the cell.</param>
/// <param name="Address">The cell as dealt.</param>
/// <param name="Tag">What the first column of its row says, to find it by if the name is lost.</param>
/// <param name="Value">The value dealt.</param>
public sealed record DealtGiven(string Exercise, string Name, string DefinedName, CellAddress Address, string Tag, decimal Value);
