using ClassKit.Terms.Bench;

namespace ClassKit.Records.Marks;

/// <summary>One sitting of work at the bench on record.</summary>
/// <param name="Sitting">1 for the first, 2 for a resit.</param>
/// <param name="Marking">What was marked by one or two.</param>
/// <param name="Comments">What the markers wrote beside the levels.</param>
public sealed record RecordedBench(int Sitting, BenchMarking Marking, IReadOnlyList<BenchComment> Comments);

/// <summary>What a marker wrote beside a student's levels.</summary>
/// <param name="Marker">Who.</param>
/// <param name="Student">The student's id.</param>
/// <param name="Text">What.</param>
public sealed record BenchComment(string Marker, string Student, string Text);
