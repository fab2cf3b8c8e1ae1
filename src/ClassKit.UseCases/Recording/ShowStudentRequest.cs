using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>What the record holds of a student is to be shown.</summary>
/// <param name="Record">The record.</param>
/// <param name="Student">The student's id.</param>
public sealed record ShowStudentRequest(TeachingRecord Record, string Student);
