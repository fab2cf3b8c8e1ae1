using ClassKit.Grading.Results;

namespace ClassKit.Desk.Returns;

/// <summary>What came back from a student, in a few words.</summary>
internal static class StatusWords
{
    public static string Of(StudentGrade student) =>
        student.Status switch
        {
            GradeStatus.Graded when student.CameBackEmpty => "came back empty",
            GradeStatus.Graded => student.Late is null ? "marked" : "marked, came late",
            GradeStatus.Missing => "nothing yet",
            GradeStatus.Unreadable => "a file that cannot be read",
        };
}
