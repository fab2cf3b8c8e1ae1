using System.Globalization;
using ClassKit.Grading.Results;
using ClassKit.Wording.Files;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>What became of every returned file: counted for a student, or not and why.</summary>
internal static class FilesSheet
{
    /// <summary>
    /// More rows than these nobody reads, and they would make the memory that a gradebook takes grow with the files; grades.json lists all.
    /// </summary>
    private const int MostRows = 1000;

    public static void Write(XLWorkbook workbook, ClassGrades grades)
    {
        var sheet = new ListSheet(
            workbook,
            "Files",
            $"Files: {grades.Dealt.LessonTitle}",
            "Every returned file: those that count for nobody, those that count, and what programs left behind.",
            [new("File", 44), new("Counts for", 30), new("Why", 90)]
        );
        List<IReadOnlyList<object?>> rows = [.. Rows(grades)];
        foreach (var row in rows.Take(MostRows))
            sheet.Add(row);
        if (rows.Count > MostRows)
            sheet.Add(
                string.Create(CultureInfo.InvariantCulture, $"and {rows.Count - MostRows} more"),
                "",
                "Every file is listed in grades.json with its digest, its fate and the reason."
            );
        if (rows.Count == 0)
            sheet.AddNothing("No file was returned.");
        sheet.Finish(Palette.Band, grades.Dealt, canFilter: rows.Count > 0);
    }

    private static IEnumerable<IReadOnlyList<object?>> Rows(ClassGrades grades)
    {
        var unmatched = grades.Unmatched.ToLookup(file => file.Fate == FileFate.Leftover);
        foreach (var file in unmatched[false])
            yield return [file.File, file.Student is { } student ? $"nobody (from {student.Shown})" : "nobody", UncountedWords.Of(file)];
        foreach (var student in grades.Students.Where(student => student.File is not null))
            yield return
            [
                student.File,
                student.Who.Shown,
                student.Status == GradeStatus.Unreadable ? "unreadable, see the flags"
                : student.IsFromPaper ? "typed from paper"
                : "",
            ];
        foreach (var file in unmatched[true])
            yield return [file.File, "nobody: left behind", UncountedWords.Of(file)];
    }
}
