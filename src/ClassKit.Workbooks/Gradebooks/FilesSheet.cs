using ClassKit.Grading;
using ClosedXML.Excel;

namespace ClassKit.Workbooks;

/// <summary>What became of every returned file: counted for a student, or not and why.</summary>
internal static class FilesSheet
{
    public static void Write(XLWorkbook workbook, ClassGrades grades)
    {
        var sheet = new ListSheet(
            workbook,
            "Files",
            $"Files: {grades.Dealt.LessonTitle}",
            "Every returned file, first those that count for nobody.",
            [new("File", 44), new("Counts for", 30), new("Why", 90)]);
        var unmatched = grades.Unmatched;
        foreach (var file in unmatched)
            sheet.Add(file.File, file.Student is { } student ? $"nobody (from {student.Name})" : "nobody", file.Reason);
        foreach (var student in grades.Students.Where(student => student.File is not null))
            sheet.Add(student.File, student.Student.Student.Name, student.Status == GradeStatus.Unreadable ? "unreadable, see the flags" : "");

        var isEmpty = unmatched.Count == 0 && grades.Students.All(student => student.File is null);
        if (isEmpty) sheet.AddNothing("No file was returned.");
        sheet.Finish(Palette.Band, grades.Dealt.Cohort, grades.Dealt.LessonTitle, canFilter: !isEmpty);
    }
}
