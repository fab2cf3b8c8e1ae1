using ClassKit.Exercises.Cohorts;

namespace ClassKit.Terms.Bench;

/// <summary>A level that stands there already and was brought back otherwise.</summary>
/// <param name="Student">Whose.</param>
/// <param name="Criterion">The place of the criterion on the form's scale.</param>
/// <param name="Before">The place of the level that stands there.</param>
/// <param name="Brought">The place of the other one.</param>
public sealed record DifferingLevel(Student Student, int Criterion, int Before, int Brought);
