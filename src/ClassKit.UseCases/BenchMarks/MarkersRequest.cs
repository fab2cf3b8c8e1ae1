using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Bench;

namespace ClassKit.UseCases.BenchMarks;

/// <summary>What comparing two markers takes.</summary>
/// <param name="Work">What was marked.</param>
/// <param name="Class">The class.</param>
/// <param name="Marking">What both saw.</param>
public sealed record MarkersRequest(string Work, Roster Class, BenchMarking Marking);
