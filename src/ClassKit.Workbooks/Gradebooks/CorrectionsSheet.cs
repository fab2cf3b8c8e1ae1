using ClassKit.Grading.Results;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>Every correction that the points follow, so that nobody has to ask why a number is not the grader's.</summary>
internal static class CorrectionsSheet
{
    public static void Write(XLWorkbook workbook, ClassGrades grades, GradebookGrid grid)
    {
        var sheet = new ListSheet(
            workbook,
            "Corrections",
            $"Corrections: {grades.Dealt.LessonTitle}",
            "Your own decisions, kept in corrections.csv. They stand over every grading.",
            [new("Student", 26), new("", 6), new("Points", 9, true), new("Before", 9, true), new("Reason", 90)]
        );
        var isEmpty = true;
        foreach (var student in grades.Students)
        {
            foreach (var answer in student.Answers)
            {
                if (answer.Correction is not { } correction)
                    continue;
                sheet.Add(student.Who.Shown, grid.TagOf(answer), answer.Points, correction.AsGraded, correction.Reason);
                isEmpty = false;
            }
        }

        if (isEmpty)
            sheet.AddNothing("Nothing was corrected.");
        sheet.Finish(Palette.Band, grades.Dealt, canFilter: !isEmpty);
    }
}
