using ClassKit.Exercises;

namespace ClassKit.UseCases;

/// <summary>When work was due, settled.</summary>
/// <param name="Moment">The moment; null if work may come at any time.</param>
/// <param name="Notes">What the instructor should know of how it was settled.</param>
internal sealed record SettledDeadline(DueMoment? Moment, IReadOnlyList<string> Notes);
