using ClassKit.Grading.Results;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>What an instructor typed into a gradebook.</summary>
/// <param name="Typed">Every cell of points that no longer holds what was graded, row by row.</param>
/// <param name="Fault">Why that cannot be said; null if it can.</param>
public sealed record GradebookReading(IReadOnlyList<TypedPoints> Typed, GradebookFault? Fault);
