using ClassKit.Terms.Bench;

namespace ClassKit.Records.Marks;

/// <summary>One sitting of work at the bench on record.</summary>
/// <param name="Sitting">1 for the first, 2 for a resit.</param>
/// <param name="Marking">What was marked by one or two.</param>
public sealed record RecordedBench(int Sitting, BenchMarking Marking);
