using ClassKit.Content.Sources;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>That a class was given a lesson is to go on record.</summary>
/// <param name="Record">The record.</param>
/// <param name="Author">Who puts it there, when and why.</param>
/// <param name="Class">What the class is called.</param>
/// <param name="Lesson">The lesson's folder.</param>
/// <param name="Day">When it was given; null for the day of the change.</param>
public sealed record EnterLessonRequest(TeachingRecord Record, Author Author, string Class, Source Lesson, DateOnly? Day);
