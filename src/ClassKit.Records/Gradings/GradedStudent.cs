namespace ClassKit.Records.Gradings;

/// <summary>One student's grades.</summary>
/// <param name="Student">The student's id; null for one who was erased.</param>
/// <param name="Status">As in grades.json.</param>
/// <param name="Points">Earned; null where there are none.</param>
/// <param name="OutOf">Possible; null where there are no points.</param>
/// <param name="LateDays">Days begun since it was due; null for work in time.</param>
/// <param name="LateOff">The share that the points lost by it; null for work in time.</param>
/// <param name="Answers">Every part's, in the order of the entry.</param>
/// <param name="Entry">As in grades.json; null for a student who was erased.</param>
public sealed record GradedStudent(
    string? Student,
    string Status,
    decimal? Points,
    decimal? OutOf,
    int? LateDays,
    decimal? LateOff,
    IReadOnlyList<RecordedAnswer> Answers,
    string? Entry
);
