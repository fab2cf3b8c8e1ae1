using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;
using ClassKit.Records.Classes;
using ClassKit.Records.Grades;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>The grades of a term as they stand given out.</summary>
/// <param name="Number">1 for the first time, 2 for a change, and so on.</param>
/// <param name="At">When they were frozen.</param>
/// <param name="Grades">By student.</param>
/// <param name="Students">Whose they are, as the record knows them, by name.</param>
public sealed record GivenOut(
    int Number,
    DateTimeOffset At,
    IReadOnlyDictionary<string, FrozenGrade> Grades,
    IReadOnlyList<Student> Students
)
{
    /// <summary>
    /// Those of a term, null where none were given out, or nothing of it is on record; what is wrong with the record where it cannot be
    /// asked.
    /// </summary>
    /// <param name="place">The record's file or folder.</param>
    /// <param name="now">When, for the name of a backup.</param>
    /// <param name="named">What the class is called.</param>
    /// <param name="title">What the term is called.</param>
    public static (GivenOut? Known, IReadOnlyList<Diagnostic> Problems) In(string place, DateTimeOffset now, string named, string title)
    {
        if (!File.Exists(RecordPlace.Of(place)))
            return (null, []);
        var opened = RecordPlace.Open(place, now, mayBegin: false);
        if (opened.Model is not { } found)
            return (null, opened.Problems);
        using var record = found;
        GivenOut? known = null;
        var asked = RecordTroubles.Told(() =>
        {
            known = Of(record, named, title);
            return new Reading<TeachingRecord>(record, []);
        });
        return (known, asked.Problems);
    }

    /// <summary>Those of a term; null where none were given out, or nothing of it is on record.</summary>
    /// <param name="record">The record.</param>
    /// <param name="named">What the class is called.</param>
    /// <param name="title">What the term is called.</param>
    public static GivenOut? Of(TeachingRecord record, string named, string title)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Read(session =>
            TermOnRecord.Find(session, named, title) is { } term && FrozenGrades.Last(session, term) is { } last
                ? Read(session, last.Number, last.At, FrozenGrades.Of(session, term))
                : null
        );
    }

    private static GivenOut Read(RecordSession session, int number, DateTimeOffset at, IReadOnlyList<FrozenGrade> grades) =>
        new(
            number,
            at,
            grades.ToDictionary(grade => grade.Student),
            [
                .. grades
                    .Select(grade => ClassRegister.FindStudent(session, grade.Student) ?? new(grade.Student, grade.Student, null))
                    .OrderBy(student => student.Name, StringComparer.OrdinalIgnoreCase),
            ]
        );
}
