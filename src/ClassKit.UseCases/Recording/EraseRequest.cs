using ClassKit.Content.Diagnostics;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>A student to be taken out of the record, and out of the files of a teaching folder where that is asked for.</summary>
/// <param name="Record">The record; null where there is none, and the files alone are meant.</param>
/// <param name="Author">Who does it, when and why.</param>
/// <param name="Student">The student's id.</param>
/// <param name="IsMeant">False to be told what it would come to, and nothing else.</param>
public sealed record EraseRequest(TeachingRecord? Record, Author Author, string Student, bool IsMeant) : IDisposable
{
    /// <summary>The teaching folder whose files name the student; null to look at none.</summary>
    public string? Folder { get; init; }

    /// <summary>True to take the student out of those files, too.</summary>
    public bool WithFiles { get; init; }

    /// <summary>
    /// A student to be taken out of the record of a place, which is opened; where there is no record, and the files are meant, out of the
    /// files alone.
    /// </summary>
    /// <param name="place">The record, or the folder that has it.</param>
    /// <param name="author">Who does it, when and why.</param>
    /// <param name="student">The student's id.</param>
    /// <param name="isMeant">False to be told what it would come to, and nothing else.</param>
    /// <param name="withFiles">True to take the student out of the files of the teaching folder, too.</param>
    public static Reading<EraseRequest> At(string place, Author author, string student, bool isMeant, bool withFiles)
    {
        ArgumentNullException.ThrowIfNull(author);
        var opened =
            withFiles && !File.Exists(RecordPlace.Of(place)) ? new(null, []) : RecordPlace.Open(place, author.Now, mayBegin: false);
        return new(
            opened.Problems.Count > 0
                ? null
                : new(opened.Model, author, student, isMeant) { Folder = RecordPlace.FolderOf(place), WithFiles = withFiles },
            opened.Problems
        );
    }

    /// <summary>Closes the record.</summary>
    public void Dispose() => Record?.Dispose();
}
