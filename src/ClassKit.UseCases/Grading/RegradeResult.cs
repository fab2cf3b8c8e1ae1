using ClassKit.Grading.Regrading;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Grading;

/// <summary>A class graded again.</summary>
/// <param name="Now">How it is graded now.</param>
/// <param name="Earlier">What is on record.</param>
/// <param name="Changes">Who changes, and why.</param>
public sealed record RegradeResult(GradeResult Now, ClassGrades Earlier, IReadOnlyList<GradeChange> Changes);
