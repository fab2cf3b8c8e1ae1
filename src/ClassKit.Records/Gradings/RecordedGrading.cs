namespace ClassKit.Records.Gradings;

/// <summary>A grading as it goes into the record and comes out of it, equal in every field.</summary>
/// <param name="Deal">The identity of what was dealt.</param>
/// <param name="Digest">The SHA-256 of grades.json as it is written.</param>
/// <param name="JudgeVersion">The version of the judge; null where the grades do not say.</param>
/// <param name="Program">The version of the program; empty where they do not say.</param>
/// <param name="Frame">What grades.json holds besides the lists below, as JSON: the judge with its fresh inputs, the due moment, the deal
/// where it differs from the one on record.</param>
/// <param name="Students">In the order of the grades.</param>
/// <param name="Files">What came back, by path.</param>
/// <param name="Typed">Points typed into a gradebook.</param>
public sealed record RecordedGrading(
    string Deal,
    string Digest,
    int? JudgeVersion,
    string Program,
    string Frame,
    IReadOnlyList<GradedStudent> Students,
    IReadOnlyList<ReturnedEntry> Files,
    IReadOnlyList<TypedEntry> Typed
)
{
    /// <summary>1 for the first grading of its deal that went on record, and so on.</summary>
    public int Number { get; init; }
}
