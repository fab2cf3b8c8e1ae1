namespace ClassKit.Grading.Results;

/// <summary>An instructor's correction that an answer's points follow.</summary>
/// <param name="AsGraded">The points that the answer had without it.</param>
/// <param name="Reason">The instructor's reason.</param>
public sealed record AppliedCorrection(decimal AsGraded, string Reason);
