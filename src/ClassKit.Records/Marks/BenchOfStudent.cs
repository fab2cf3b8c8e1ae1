using ClassKit.Records.Storage;

namespace ClassKit.Records.Marks;

/// <summary>What one marker saw of a student at the bench.</summary>
/// <param name="Class">What the class is called.</param>
/// <param name="Term">The title of the term.</param>
/// <param name="Work">The title of the work.</param>
/// <param name="Sitting">1 for the first.</param>
/// <param name="Marker">Who marked.</param>
/// <param name="Levels">What the level of each criterion is called, in the rubric's order; null where it was not asked.</param>
/// <param name="Comment">What was written of them; null for nothing.</param>
/// <param name="Change">Who put it on record, when and why.</param>
public sealed record BenchOfStudent(
    string Class,
    string Term,
    string Work,
    int Sitting,
    string Marker,
    IReadOnlyList<(string Criterion, string? Level)> Levels,
    string? Comment,
    Change Change
);
