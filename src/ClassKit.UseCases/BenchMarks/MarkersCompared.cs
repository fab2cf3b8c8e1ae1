using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Agreement;

namespace ClassKit.UseCases.BenchMarks;

/// <summary>How far two markers agree.</summary>
/// <param name="Class">The class.</param>
/// <param name="Agreement">The agreement, criterion by criterion.</param>
public sealed record MarkersCompared(Roster Class, MarkerAgreement Agreement);
