using ClassKit.Grading.Results;

namespace ClassKit.Grading.Regrading;

/// <summary>An answer that is judged or credited otherwise than on record.</summary>
/// <param name="Answer">As graded now.</param>
/// <param name="Before">Its points on record; null if there is no record of it.</param>
/// <param name="Why">Every reason; never empty.</param>
public sealed record AnswerChange(AnswerGrade Answer, decimal? Before, IReadOnlyList<AnswerCause> Why);
