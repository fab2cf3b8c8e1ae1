using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Lateness;

/// <summary>Finds late work by when a workbook says that it was saved last, and takes off what the marking scheme says.</summary>
/// <remarks>
/// A file that does not say when it was saved is not late, and that it does not say so is put before the instructor: else whoever uses a
/// program that leaves the time out could never be late, and nobody would know. The time is what the student's machine had for it, so that
/// every late workbook is told as a fact, whatever it costs. A time that cannot be right, or that is late by one clock and not by another,
/// is put before the instructor and costs nothing.
/// </remarks>
public static class LateWork
{
    private static readonly LatePolicy Free = new(0, 0);

    /// <summary>
    /// How far the clocks of two places are apart at most (UTC-12 to UTC+14): archives write dates without a zone, and unpacking may move
    /// them by as much.
    /// </summary>
    private static readonly TimeSpan ZonesApart = TimeSpan.FromHours(26);

    /// <summary>Archives that know no date write one of this year, the first that theirs can hold.</summary>
    private const int NoDate = 1980;

    /// <summary>The grades with late work marked.</summary>
    /// <param name="grades">As graded.</param>
    /// <param name="due">When the work was due, for all who have no moment of their own; work of that very moment is in time.</param>
    public static ClassGrades Mark(ClassGrades grades, DueMoment due)
    {
        ArgumentNullException.ThrowIfNull(grades);
        ArgumentNullException.ThrowIfNull(due);
        var graded = grades.Files.Where(file => file.Fate == FileFate.Graded).ToDictionary(file => file.File);
        var own = grades.Dealt.Students.Where(seat => seat.Due is not null).ToDictionary(seat => seat.Who.Id, seat => seat.Due!);
        return grades with
        {
            Due = due,
            Students =
            [
                .. grades.Students.Select(student =>
                    student.File is { } name && graded.TryGetValue(name, out var file)
                        ? Mark(
                            student,
                            file,
                            grades.Came.TryGetValue(name, out var came) ? came : null,
                            own.GetValueOrDefault(student.Who.Id, due),
                            grades.Dealt.Marking.Late ?? Free
                        )
                        : student
                ),
            ],
        };
    }

    private static StudentGrade Mark(StudentGrade student, AccountedFile file, DateTime? came, DueMoment due, LatePolicy policy)
    {
        var name = new ReturnedName(file.File);
        if (file.Modified is not { } written)
            return With(new Flag.SavedUnknown(name));
        // What names no zone is read as the class's clocks show it, and as universal time: it must be late both ways.
        DateTime[] readings =
            written.Kind == DateTimeKind.Unspecified
                ? [.. new[] { DateTime.SpecifyKind(written, DateTimeKind.Utc), due.FromClocks(written) }.Order()]
                : [written];
        if (due.After(readings[^1]) <= TimeSpan.Zero)
            return student;
        if (due.After(readings[0]) <= TimeSpan.Zero)
            return With(new Flag.SavedUnclear(name, readings[0], readings[^1], due));
        var saved = readings[0];
        if (came is { Year: > NoDate } dated && dated + ZonesApart < saved)
            return With(
                new Flag.SavedAfterItCame(name, saved, dated.Kind == DateTimeKind.Unspecified ? due.FromClocks(dated) : dated, due)
            );
        var days = (int)Math.Ceiling(due.After(saved).TotalDays);
        var off = policy.Off(days);
        return With(new Flag.SavedLate(name, saved, due, off)) with { Late = new(days, off) { By = saved - due.At.UtcDateTime } };

        StudentGrade With(Flag flag) => student with { Flags = [.. student.Flags, flag] };
    }
}
