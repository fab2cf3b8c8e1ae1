using ClassKit.Grading.Results;
using ClassKit.Wording.Flags;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>The facts that an instructor should see.</summary>
internal static class FlagsSheet
{
    public static void Write(XLWorkbook workbook, ClassGrades grades)
    {
        var sheet = new ListSheet(
            workbook,
            "Flags",
            $"Flags: {grades.Dealt.LessonTitle}",
            "Facts, not verdicts: talk with the student first.",
            [
                new("Student", 26),
                new("Id", 14),
                new("File", 34),
                new("Flag", 26),
                new("What was found", 70),
                new("What may lie behind it", 50),
            ]
        );
        foreach (var student in grades.Students)
        {
            foreach (var flag in student.Flags)
                sheet.Add(
                    student.Who.Shown,
                    student.Who.Id,
                    student.File,
                    flag.Code,
                    FlagWords.Of(flag, grades.Dealt.Exercises),
                    InnocentExplanations.Of(flag)
                );
        }

        var isEmpty = grades.Students.All(student => student.Flags.Count == 0);
        if (isEmpty)
            sheet.AddNothing("Nothing was flagged.");
        sheet.Finish(Palette.Crust, grades.Dealt, canFilter: !isEmpty);
    }
}
