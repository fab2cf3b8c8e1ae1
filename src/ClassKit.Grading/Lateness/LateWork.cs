using System.Globalization;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Finds late work by when a workbook says that it was saved last, and takes off what the marking scheme says.</summary>
/// <remarks>
/// A file that does not say when it was saved is not late. The time is what the student's machine had for it, so that every late workbook is put
/// before the instructor as a fact, whatever it costs.
/// </remarks>
public static class LateWork
{
    private static readonly LatePolicy Free = new(0, 0);

    /// <summary>The grades with late work marked.</summary>
    /// <param name="grades">As graded.</param>
    /// <param name="due">When the work was due; work of that very moment is in time.</param>
    public static ClassGrades Mark(ClassGrades grades, DateTimeOffset due)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var saved = grades.Files.Where(file => file.Fate == FileFate.Graded).ToDictionary(file => file.File, file => file.Modified);
        return grades with
        {
            Students = [.. grades.Students.Select(student => student.File is { } file && saved.GetValueOrDefault(file) is { } at && at > due.UtcDateTime
                ? Mark(student, at, due, grades.Dealt.Marking.Late ?? Free)
                : student)],
        };
    }

    private static StudentGrade Mark(StudentGrade student, DateTime saved, DateTimeOffset due, LatePolicy policy)
    {
        var days = (int)Math.Ceiling((saved - due.UtcDateTime).TotalDays);
        var off = policy.Off(days);
        return student with
        {
            Late = new(days, off),
            Flags = [.. student.Flags, new(FlagCodes.Late, string.Create(CultureInfo.InvariantCulture,
                $"{student.File} says that it was saved {saved:yyyy-MM-dd HH:mm} UTC, after {due.UtcDateTime:yyyy-MM-dd HH:mm} UTC when it was due. {(off > 0 ? $"{100 * off:0.#} % is taken off." : "Nothing is taken off.")}"))],
        };
    }
}
