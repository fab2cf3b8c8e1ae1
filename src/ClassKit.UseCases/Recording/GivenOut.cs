using ClassKit.Records.Grades;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>The grades of a term as they stand given out.</summary>
/// <param name="Number">1 for the first time, 2 for a change, and so on.</param>
/// <param name="At">When they were frozen.</param>
/// <param name="Grades">By student.</param>
public sealed record GivenOut(int Number, DateTimeOffset At, IReadOnlyDictionary<string, FrozenGrade> Grades)
{
    /// <summary>Those of a term; null where none were given out, or nothing of it is on record.</summary>
    /// <param name="record">The record.</param>
    /// <param name="named">What the class is called.</param>
    /// <param name="title">What the term is called.</param>
    public static GivenOut? Of(TeachingRecord record, string named, string title)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Read(session =>
            TermOnRecord.Find(session, named, title) is { } term && FrozenGrades.Last(session, term) is { } last
                ? new GivenOut(last.Number, last.At, FrozenGrades.Of(session, term).ToDictionary(grade => grade.Student))
                : null
        );
    }
}
