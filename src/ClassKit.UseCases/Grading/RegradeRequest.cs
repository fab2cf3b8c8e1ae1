using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Grading;

/// <summary>What grading again takes.</summary>
/// <param name="Again">What is graded; what was dealt has the keys and the marking scheme that count now.</param>
/// <param name="Earlier">What is on record.</param>
public sealed record RegradeRequest(GradeRequest Again, ClassGrades Earlier);
