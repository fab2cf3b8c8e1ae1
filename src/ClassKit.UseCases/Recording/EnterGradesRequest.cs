using ClassKit.Grading.Results;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>Grades to go on record.</summary>
/// <param name="Record">The record.</param>
/// <param name="Author">Who puts them there, when and why.</param>
/// <param name="Class">What the class is called; null for what the deal calls it.</param>
/// <param name="Grades">The grades, with what was dealt to whom.</param>
public sealed record EnterGradesRequest(TeachingRecord Record, Author Author, string? Class, ClassGrades Grades);
