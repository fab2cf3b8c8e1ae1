using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Lateness;

/// <summary>Finds late work by when a workbook says that it was saved last, and takes off what the marking scheme says.</summary>
/// <remarks>
/// A file that does not say when it was saved is not late, and that it does not say so is put before the instructor: else whoever uses a
/// program that leaves the time out could never be late, and nobody would know. The time is what the student's machine had for it, so that
/// every late workbook is told as a fact, whatever it costs.
/// </remarks>
public static class LateWork
{
    private static readonly LatePolicy Free = new(0, 0);

    /// <summary>The grades with late work marked.</summary>
    /// <param name="grades">As graded.</param>
    /// <param name="due">When the work was due, for all who have no moment of their own; work of that very moment is in time.</param>
    public static ClassGrades Mark(ClassGrades grades, DueMoment due)
    {
        ArgumentNullException.ThrowIfNull(grades);
        ArgumentNullException.ThrowIfNull(due);
        var saved = grades.Files.Where(file => file.Fate == FileFate.Graded).ToDictionary(file => file.File, file => file.Modified);
        var own = grades.Dealt.Students.Where(seat => seat.Due is not null).ToDictionary(seat => seat.Who.Id, seat => seat.Due!);
        return grades with
        {
            Due = due,
            Students =
            [
                .. grades.Students.Select(student =>
                    student.File is not { } file || !saved.TryGetValue(file, out var time) ? student
                    : time is not { } at ? student with { Flags = [.. student.Flags, new Flag.SavedUnknown(new(file))] }
                    : own.GetValueOrDefault(student.Who.Id, due) is var mine && at > mine.At.UtcDateTime
                        ? Mark(student, at, mine, grades.Dealt.Marking.Late ?? Free)
                    : student
                ),
            ],
        };
    }

    private static StudentGrade Mark(StudentGrade student, DateTime saved, DueMoment due, LatePolicy policy)
    {
        var by = saved - due.At.UtcDateTime;
        var days = (int)Math.Ceiling(by.TotalDays);
        var off = policy.Off(days);
        var late = new Late(days, off) { By = by };
        return student with { Late = late, Flags = [.. student.Flags, new Flag.SavedLate(new(student.File!), saved, due, off)] };
    }
}
