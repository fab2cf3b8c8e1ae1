using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>A student to be taken out of the record.</summary>
/// <param name="Record">The record.</param>
/// <param name="Author">Who does it, when and why.</param>
/// <param name="Student">The student's id.</param>
/// <param name="IsMeant">False to be told what it would come to, and nothing else.</param>
public sealed record EraseRequest(TeachingRecord Record, Author Author, string Student, bool IsMeant);
