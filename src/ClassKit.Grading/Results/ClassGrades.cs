using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>The grades of a whole class.</summary>
/// <param name="Dealt">What was dealt.</param>
/// <param name="Students">Every student of the roster, in its order.</param>
/// <param name="Unmatched">Every returned file that counts for no student.</param>
public sealed record ClassGrades(
    DealtClass Dealt,
    IReadOnlyList<StudentGrade> Students,
    IReadOnlyList<UnmatchedFile> Unmatched);
