using ClassKit.Exercises;
using ClassKit.Grading;
using ClosedXML.Excel;

namespace ClassKit.Workbooks;

/// <summary>What every answer turned out to be, in words; the counts of the sheet of parts follow from here.</summary>
internal static class OutcomesSheet
{
    private const double PartWidth = 15;
    private const int PartsPerPage = 12;

    public static void Write(XLWorkbook workbook, ClassGrades grades, GradebookGrid grid)
    {
        var sheet = workbook.AddWorksheet(GradebookGrid.OutcomesSheet);
        GridHead.Write(sheet, grades, grid, new(
            "Outcomes",
            $"Change a word here, and the counts on the sheet of parts follow{ClassName.Behind(grades.Dealt.Cohort)}",
            PartWidth,
            XLAlignmentHorizontalValues.Left,
            grid.LastPartColumn));
        for (var index = 0; index < grades.Students.Count; index++)
        {
            var row = GradebookGrid.FirstStudentRow + index;
            foreach (var answer in grades.Students[index].Answers)
                sheet.Cell(row, grid.ColumnOf(answer)).SetText(OutcomeWords.Of(answer.Outcome));

            sheet.Range(row, 1, row, grid.LastPartColumn).AsTableRow();
        }

        Tint(sheet.Range(GradebookGrid.FirstStudentRow, GradebookGrid.FirstPartColumn, grid.LastStudentRow, grid.LastPartColumn));
        sheet.TabColor = Palette.Band;
        sheet.SetUpPage(sheet.Range(1, 1, grid.LastStudentRow, grid.LastPartColumn), XLPageOrientation.Landscape, grades.Dealt.Cohort, grades.Dealt.LessonTitle);
        sheet.PageSetup.PagesWide = (grid.Answers.Count + PartsPerPage - 1) / PartsPerPage;
        sheet.PageSetup.SetColumnsToRepeatAtLeft(GradebookGrid.NameColumn, GradebookGrid.NameColumn);
        sheet.PageSetup.SetRowsToRepeatAtTop(GradebookGrid.ExerciseRow, GradebookGrid.OutOfRow);
    }

    /// <summary>A tint helps the eye along; the word tells.</summary>
    private static void Tint(IXLRange range)
    {
        foreach (var outcome in Enum.GetValues<Outcome>())
        {
            if (TintOf(outcome) is { } tint) range.AddConditionalFormat().WhenEquals($"\"{OutcomeWords.Of(outcome)}\"").Fill.SetBackgroundColor(tint);
        }
    }

    private static XLColor? TintOf(Outcome outcome) => outcome switch
    {
        Outcome.Sound or Outcome.FollowThrough => Palette.RightTint,
        Outcome.ValueOnly => Palette.PartlyTint,
        Outcome.Misconception or Outcome.Incorrect or Outcome.Unreadable => Palette.Attention,
        Outcome.Unsupported => Palette.AskTint,
        Outcome.Blank => null,
    };
}
