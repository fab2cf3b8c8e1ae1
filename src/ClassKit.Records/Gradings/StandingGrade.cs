namespace ClassKit.Records.Gradings;

/// <summary>What a student has in a deal, by the grading that stands.</summary>
/// <param name="Deal">The deal's code.</param>
/// <param name="Title">What was dealt.</param>
/// <param name="Student">The student's id; null for one who was erased.</param>
/// <param name="Status">As in grades.json.</param>
/// <param name="Points">Earned; null where there are none.</param>
/// <param name="OutOf">Possible; null where there are no points.</param>
public sealed record StandingGrade(string Deal, string Title, string? Student, string Status, decimal? Points, decimal? OutOf);
