namespace ClassKit.Records.Gradings;

/// <summary>What became of one part.</summary>
/// <param name="Place">Of the part in the deal, counted from 0.</param>
/// <param name="Outcome">As in grades.json.</param>
/// <param name="Points">Earned.</param>
/// <param name="OutOf">Possible.</param>
/// <param name="Misconception">The id of the one that was met; null for none.</param>
/// <param name="NearMiss">The wrong formula near the key that it behaved like, over the exercise's names; null for none, and of gradings
/// from before there was a place for it.</param>
/// <param name="Correction">What the instructor decided; null where the points are the grader's.</param>
public sealed record RecordedAnswer(
    int Place,
    string Outcome,
    decimal Points,
    decimal OutOf,
    string? Misconception,
    string? NearMiss,
    RecordedCorrection? Correction
);

/// <summary>A correction.</summary>
/// <param name="AsGraded">The points without it.</param>
/// <param name="Reason">The instructor's; null for none, and of a student who was erased.</param>
public sealed record RecordedCorrection(decimal AsGraded, string? Reason);
