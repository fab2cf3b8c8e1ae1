using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Grading.Results;

/// <summary>
/// The grades of a whole class: the one record of a grading. grades.json, grades.csv, the tables for school records, gradebook and reports
/// are written from it; what reads grades.json gets it back, equal in every field.
/// </summary>
/// <param name="Dealt">What was dealt, with the keys and the marking scheme that the grades were made by. Without students where it was
/// read from a record alone.</param>
/// <param name="Students">Every student of the roster, in its order.</param>
/// <param name="Files">Every returned file and what became of it, by path.</param>
public sealed record ClassGrades(DealtClass Dealt, IReadOnlyList<StudentGrade> Students, IReadOnlyList<AccountedFile> Files)
{
    /// <summary>What decided the grades besides what was dealt and returned; null if it is not known.</summary>
    public JudgeRecord? Judging { get; init; }

    /// <summary>
    /// When each file came at the latest, by the folder or archive that it lies in; those that do not say are missing. Copying a folder
    /// changes it, so that it stands in no record.
    /// </summary>
    internal IReadOnlyDictionary<string, DateTime> Came { get; init; } = new Dictionary<string, DateTime>();

    /// <summary>When the work was due; null if it may come at any time.</summary>
    public DueMoment? Due { get; init; }

    /// <summary>Points that the instructor typed into a gradebook and that do not count yet.</summary>
    public IReadOnlyList<TypedPoints> Waiting { get; init; } = [];

    /// <summary>Points that the instructor typed into a gradebook and that become corrections with this grading.</summary>
    public IReadOnlyList<TypedPoints> TakenOver { get; init; } = [];

    /// <summary>What the instructor is told of changed gradebooks that cannot be read.</summary>
    public IReadOnlyList<UnreadGradebook> UnreadGradebooks { get; init; } = [];

    /// <summary>
    /// The files that stand beside no student's name: all but those that count, and the first of a student's that could not be read.
    /// </summary>
    public IReadOnlyList<AccountedFile> Unmatched
    {
        get
        {
            var beside = Students.Select(student => student.File).OfType<string>().ToHashSet(StringComparer.Ordinal);
            return [.. Files.Where(file => !beside.Contains(file.File))];
        }
    }

    /// <summary>
    /// The grades of some students who come one after another, with their files and what was typed for them. Files of nobody are in the
    /// first part's.
    /// </summary>
    public ClassGrades Of(ClassPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.IsWhole)
            return this;
        var students = part.Of(Students);
        var ids = students.Select(student => student.Who.Id).ToHashSet(StringComparer.Ordinal);
        return this with
        {
            Students = students,
            Files = [.. Files.Where(file => file.Student is { } student ? ids.Contains(student.Id) : part.Number == 1)],
            Waiting = [.. Waiting.Where(typed => ids.Contains(typed.Student.Id))],
            TakenOver = [.. TakenOver.Where(typed => ids.Contains(typed.Student.Id))],
        };
    }
}
