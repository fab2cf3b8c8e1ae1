using ClassKit.Exercises.Cohorts;
using ClassKit.Notes;
using ClassKit.Records.Erasing;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>A student who was erased, or would be.</summary>
/// <param name="Who">The student.</param>
/// <param name="Erased">What is gone from the record and what stays; null where it holds nothing of the student.</param>
/// <param name="Backups">Copies of the record that were made before, and still hold the student.</param>
public sealed record ErasedStudent(Student Who, Erased? Erased, IReadOnlyList<string> Backups)
{
    /// <summary>Whether bytes of the student are still in the file of the record.</summary>
    public Scoured InFile { get; init; }

    /// <summary>The files that named the student before.</summary>
    public IReadOnlyList<StudentTrace> Traces { get; init; } = [];

    /// <summary>What became of these files.</summary>
    public TraceFate Fate { get; init; }
}
