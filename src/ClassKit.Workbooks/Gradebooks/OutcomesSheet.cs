using ClassKit.Grading.Results;
using ClassKit.Wording.Cohorts;
using ClassKit.Wording.Outcomes;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>What every answer turned out to be, in words; the counts of the sheet of parts follow from here.</summary>
internal static class OutcomesSheet
{
    private const double PartWidth = 17.5;

    public static void Write(XLWorkbook workbook, ClassGrades grades, GradebookGrid grid)
    {
        var sheet = workbook.AddWorksheet(GradebookGrid.OutcomesSheet);
        GridHead.Write(sheet, grades, grid, new("Outcomes", PartWidth, XLAlignmentHorizontalValues.Left, grid.LastPartColumn));
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
        GridHead.SetUpPages(
            sheet,
            grades,
            grid,
            $"What every answer turned out to be. To change what it earns, type points on the sheet {GradebookGrid.PointsSheet}{ClassName.Behind(grades.Dealt.Cohort)}",
            grid.LastStudentRow,
            grid.LastPartColumn
        );
    }
}
