using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Regrading;

namespace ClassKit.UseCases.Exporting;

/// <summary>What tables for a school's records take.</summary>
/// <param name="Dealt">What was dealt.</param>
/// <param name="Grades">How it was graded.</param>
/// <param name="Exchange">What the school's records know of the class.</param>
public sealed record GradeExchangeRequest(DealtClass Dealt, EarlierGrades Grades, GradeExchange Exchange);
