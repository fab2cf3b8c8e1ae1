using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Recording;

/// <summary>What was dealt to a student, and what came of it.</summary>
/// <param name="Deal">What was dealt to the class.</param>
/// <param name="Grade">The student's grades that stand; null where none are on record.</param>
public sealed record StudentWork(DealtClass Deal, StudentGrade? Grade);
