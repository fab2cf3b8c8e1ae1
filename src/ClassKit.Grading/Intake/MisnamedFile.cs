using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Intake;

/// <summary>
/// A file that bears one student's name and holds what was dealt to another: somebody may have sent the wrong one, or another's.
/// </summary>
/// <param name="File">The file.</param>
/// <param name="Named">Whom its name speaks of.</param>
/// <param name="Owner">Whose workbook is inside.</param>
/// <param name="HasOther">True if another file of the owner's could count in its place, so that nothing is lost where it is set
/// aside.</param>
public sealed record MisnamedFile(AccountedFile File, Student Named, Student Owner, bool HasOther)
{
    /// <summary>Those among what was returned, by path.</summary>
    public static IReadOnlyList<MisnamedFile> In(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var names = new NameHints(grades.Dealt);
        var versions = grades
            .Files.Where(file => file is { Fate: FileFate.Graded or FileFate.OtherVersion, Student: not null })
            .ToLookup(file => file.Student!.Id);
        return
        [
            .. versions
                .SelectMany(files => files)
                .Select(file => (File: file, Named: (names.Of(file.File) ?? OfOneWord(file))?.Who))
                .Where(one => one.Named is { } named && named.Id != one.File.Student!.Id)
                .Select(one => new MisnamedFile(one.File, one.Named!, one.File.Student!, versions[one.File.Student!.Id].Skip(1).Any()))
                .OrderBy(one => one.File.File, StringComparer.Ordinal),
        ];

        // A copy under another's first name: only where the owner sent another one, and nothing came from the other.
        DealtStudent? OfOneWord(AccountedFile file) =>
            versions[file.Student!.Id].Skip(1).Any() && names.OfOneWord(file.File) is { } one && !versions.Contains(one.Who.Id)
                ? one
                : null;
    }
}
