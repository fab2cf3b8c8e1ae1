using ClassKit.Grading.Results;
using ClassKit.Wording.Cohorts;
using ClassKit.Wording.Outcomes;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>What every answer turned out to be, in words; the counts of the sheet of parts follow from here.</summary>
internal static class OutcomesSheet
{
    private const double PartWidth = 18;
    private const int PartsPerPage = 10;

    public static void Write(XLWorkbook workbook, ClassGrades grades, GradebookGrid grid)
    {
        var sheet = workbook.AddWorksheet(GradebookGrid.OutcomesSheet);
        GridHead.Write(
            sheet,
            grades,
            grid,
            new(
                "Outcomes",
                $"What every answer turned out to be. To change what it earns, type points on the sheet {GradebookGrid.PointsSheet}{ClassName.Behind(grades.Dealt.Cohort)}",
                PartWidth,
                XLAlignmentHorizontalValues.Left,
                grid.LastPartColumn
            )
        );
        for (var index = 0; index < grades.Students.Count; index++)
        {
            var row = GradebookGrid.FirstStudentRow + index;
            foreach (var answer in grades.Students[index].Answers)
                sheet.Cell(row, grid.ColumnOf(answer)).SetText(OutcomeText.Brief(OutcomeText.Shown(answer.Outcome, answer.Part)));

            sheet.Range(row, 1, row, grid.LastPartColumn).AsTableRow();
        }

        sheet.Range(GradebookGrid.FirstStudentRow, GradebookGrid.FirstPartColumn, grid.LastStudentRow, grid.LastPartColumn).AsOutcomes();
        sheet.ProtectFromSlips();
        sheet.TabColor = Palette.Band;
        sheet.SetUpPage(
            sheet.Range(1, 1, grid.LastStudentRow, grid.LastPartColumn),
            XLPageOrientation.Landscape,
            grades.Dealt.Paper,
            grades.Dealt.Cohort,
            grades.Dealt.LessonTitle
        );
        sheet.PageSetup.PagesWide = (grid.Answers.Count + PartsPerPage - 1) / PartsPerPage;
        sheet.PageSetup.SetColumnsToRepeatAtLeft(GradebookGrid.NameColumn, GradebookGrid.NameColumn);
        sheet.PageSetup.SetRowsToRepeatAtTop(GradebookGrid.ExerciseRow, GradebookGrid.OutOfRow);
    }
}
