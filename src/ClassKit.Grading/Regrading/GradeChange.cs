using ClassKit.Exercises.Cohorts;

namespace ClassKit.Grading.Regrading;

/// <summary>A student whose points differ from what is on record.</summary>
/// <param name="Student">Who.</param>
/// <param name="Before">Earned and possible, as on record.</param>
/// <param name="Now">Earned and possible, as graded now.</param>
/// <param name="Answers">The answers whose points or outcome differ; a whole student may come or go instead.</param>
/// <param name="Why">What holds for all answers, such as another file; often empty.</param>
public sealed record GradeChange(
    Student Student,
    (decimal Points, decimal OutOf) Before,
    (decimal Points, decimal OutOf) Now,
    IReadOnlyList<AnswerChange> Answers,
    IReadOnlyList<StudentCause> Why
);
