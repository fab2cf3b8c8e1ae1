using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>A student to be taken out of the record, and out of the files of a teaching folder where that is asked for.</summary>
/// <param name="Record">The record; null where there is none, and the files alone are meant.</param>
/// <param name="Author">Who does it, when and why.</param>
/// <param name="Student">The student's id.</param>
/// <param name="IsMeant">False to be told what it would come to, and nothing else.</param>
public sealed record EraseRequest(TeachingRecord? Record, Author Author, string Student, bool IsMeant)
{
    /// <summary>The teaching folder whose files name the student; null to look at none.</summary>
    public string? Folder { get; init; }

    /// <summary>True to take the student out of those files, too.</summary>
    public bool WithFiles { get; init; }
}
