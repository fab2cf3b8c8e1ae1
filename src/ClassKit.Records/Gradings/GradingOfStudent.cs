using ClassKit.Records.Storage;

namespace ClassKit.Records.Gradings;

/// <summary>What one grading of a deal made of a student's work.</summary>
/// <param name="Number">1 for the first; the highest of a deal stands.</param>
/// <param name="Grade">What it came to.</param>
/// <param name="Change">Who put it on record, when and why.</param>
public sealed record GradingOfStudent(int Number, StandingGrade Grade, Change Change);
