using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Intake;

/// <summary>
/// What one returned file came to, before it is weighed against others of the same student. The workbook itself is not kept.
/// </summary>
public sealed class JudgedFile
{
    private readonly ReturnedFile _file;

    internal JudgedFile(ReturnedFile file, DealtStudent? student, StudentGrade? grade) =>
        (_file, Student, Grade, Points, OutOf, IsEmpty, NamedAs) = (
            file with
            {
                Workbook = null,
            },
            student,
            grade,
            grade?.Points,
            grade?.OutOf,
            grade is { CameBackEmpty: true },
            grade?.Flags.OfType<Flag.NameDiffers>().FirstOrDefault()?.Named
        );

    /// <summary>True for what was answered on paper.</summary>
    internal bool IsPaper { get; init; }

    /// <summary>The path of the file.</summary>
    public string Path => _file.Path;

    /// <summary>The file, to speak of in a fact.</summary>
    internal ReturnedName Name => new(Path);

    /// <summary>Whose it is, or seems to be.</summary>
    internal DealtStudent? Student { get; }

    /// <summary>Which deal it is from, if it is another than the one at hand.</summary>
    internal OtherDeal? Other { get; init; }

    /// <summary>The grade; null if there was no workbook of this class, or once another of the same student counts.</summary>
    internal StudentGrade? Grade { get; private set; }

    /// <summary>What it earned; null if there was no workbook of this class.</summary>
    internal decimal? Points { get; }

    /// <summary>What it could earn; null if there was no workbook of this class.</summary>
    internal decimal? OutOf { get; }

    internal bool IsGraded => Points is not null;

    /// <summary>True for a workbook in which nothing was answered.</summary>
    internal bool IsEmpty { get; }

    /// <summary>Whom the file's name speaks of, where that is another student than the one whose workbook is inside; else null.</summary>
    internal Student? NamedAs { get; }

    /// <summary>Gives up the answers, where another file counts.</summary>
    internal void ForgetAnswers() => Grade = null;

    internal string? Digest => _file.Digest;

    /// <summary>
    /// Who saved it last, as it says itself; null if it does not say. Compared within the class, and never shown or put on record.
    /// </summary>
    internal string? SavedBy => _file.SavedBy;

    /// <summary>Why it was not read.</summary>
    /// <exception cref="InvalidOperationException">It was.</exception>
    internal Refusal Refusal => _file.Refusal ?? throw new InvalidOperationException("This file was read.");

    internal bool IsLeftover => _file.Refusal is Refusal.Leftover;

    internal bool IsRead => _file.Refusal is null;

    /// <summary>When it was saved last, as it says itself; null if it does not say.</summary>
    internal DateTime? Saved => _file.Modified;

    /// <summary>When it came at the latest, by the folder or archive that it lies in; null if that does not say.</summary>
    internal DateTime? Dated => _file.Dated;

    /// <summary>The file accounted for.</summary>
    internal AccountedFile As(FileFate fate, Uncounted? why = null) =>
        new(Path, Digest, _file.Modified, fate, Student?.Who, why) { Fault = _file.Fault, Other = Other };

    /// <summary>The file accounted for as one that was not read.</summary>
    internal AccountedFile AsUnread() => As(_file.Fault is null ? FileFate.Refused : FileFate.OurError, new Uncounted.NotRead(Refusal));
}
