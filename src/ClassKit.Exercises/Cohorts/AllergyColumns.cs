namespace ClassKit.Exercises.Cohorts;

/// <summary>
/// Columns of a class list whose titles speak of allergies. What somebody must keep away from is known of a class and never of a student:
/// whose a cell is is not kept.
/// </summary>
/// <param name="Titles">The columns.</param>
/// <param name="Cells">What stands in them, each text once and in the order of its letters, so that none says whose it is.</param>
public sealed record AllergyColumns(IReadOnlyList<string> Titles, IReadOnlyList<string> Cells);
