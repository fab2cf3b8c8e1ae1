using ClassKit.Grading.Results;
using ClassKit.Wording.Answers;

namespace ClassKit.Pages.Outcomes;

/// <summary>What became of a student's file, in plain words to the instructor.</summary>
internal static class StatusText
{
    /// <summary>The status, and where the reason stands if a file could not be read.</summary>
    public static string Of(StudentGrade student) =>
        student.Status switch
        {
            GradeStatus.Graded when student.IsFromPaper => "graded, from paper",
            GradeStatus.Graded when student.Late is { } late => $"graded, {LateWords.Of(late)} late",
            GradeStatus.Graded => "graded",
            GradeStatus.Missing => "missing: nothing came back",
            GradeStatus.Unreadable => "unreadable: why stands under “Facts to look at”",
        };
}
