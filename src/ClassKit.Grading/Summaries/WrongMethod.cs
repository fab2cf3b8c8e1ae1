using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Grading.Summaries;

/// <summary>A wrong method that no misconception lists and that several students of a class used.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Part">The part.</param>
/// <param name="Formula">The method over the exercise's names: the shortest that one of them wrote.</param>
/// <param name="Edits">What it has otherwise than the key; empty where nobody can say.</param>
/// <param name="Students">Who used it, in the order of the grades.</param>
/// <param name="Asked">How many handed the part in.</param>
public sealed record WrongMethod(
    Exercise Exercise,
    Part Part,
    CellFormula Formula,
    IReadOnlyList<KeyEdit> Edits,
    IReadOnlyList<Student> Students,
    int Asked
)
{
    /// <summary>What one of them typed; null where none of them typed a formula.</summary>
    public string? Example { get; init; }
}
