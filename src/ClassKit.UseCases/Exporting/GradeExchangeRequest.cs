using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Exporting;

/// <summary>What tables for a school's records take.</summary>
/// <param name="Grades">The record of the class.</param>
/// <param name="Exchange">What the school's records know of the class.</param>
public sealed record GradeExchangeRequest(ClassGrades Grades, GradeExchange Exchange);
