using System.Globalization;
using ClassKit.Grading.Results;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>The head that both grids share: title, exercises over their parts, tags, and who is in which row.</summary>
internal static class GridHead
{
    public const double NameWidth = 26;
    public const double IdWidth = 20;
    private const double StatusWidth = 11;

    /// <summary>What the title of an exercise needs, however few parts it has.</summary>
    private const double ExerciseWidth = 18;

    public static void Write(IXLWorksheet sheet, ClassGrades grades, GradebookGrid grid, GridLook look)
    {
        sheet.AsPage();
        sheet.Range(1, 1, 1, look.LastColumn).AsTitle();

        // The first column repeats on every printed page, so that only a short word may stand in it.
        sheet.Cell(1, GradebookGrid.NameColumn).SetText(" " + look.Title);
        sheet.Cell(1, GradebookGrid.IdColumn).SetText(grades.Dealt.LessonTitle);

        sheet.Column(GradebookGrid.NameColumn).Width = NameWidth;
        sheet.Column(GradebookGrid.IdColumn).Width = IdWidth;
        sheet.Column(GradebookGrid.StatusColumn).Width = StatusWidth;

        sheet.Range(GradebookGrid.ExerciseRow, 1, GradebookGrid.OutOfRow, look.LastColumn).AsTableHead();
        sheet.Cell(GradebookGrid.TagRow, GradebookGrid.NameColumn).SetText(GradebookGrid.NameHead);
        sheet.Cell(GradebookGrid.TagRow, GradebookGrid.IdColumn).SetText(GradebookGrid.IdHead);
        sheet.Cell(GradebookGrid.TagRow, GradebookGrid.StatusColumn).SetText("Status");
        sheet.Cell(GradebookGrid.OutOfRow, GradebookGrid.NameColumn).SetText("out of");
        WriteParts(sheet, grid, look);
        WriteStudents(sheet, grades);
        sheet.SheetView.Freeze(GradebookGrid.OutOfRow, GradebookGrid.NameColumn);
    }

    /// <summary>How it prints: exercises whole on their pages, each student's name on every page.</summary>
    /// <param name="sheet">The sheet, its widths set.</param>
    /// <param name="grades">Of which class.</param>
    /// <param name="grid">Where parts and students stand.</param>
    /// <param name="explanation">What the sheet is for: stands over the first page.</param>
    /// <param name="lastRow">The last row that is printed.</param>
    /// <param name="lastColumn">The last column that is printed.</param>
    public static void SetUpPages(
        IXLWorksheet sheet,
        ClassGrades grades,
        GradebookGrid grid,
        string explanation,
        int lastRow,
        int lastColumn
    )
    {
        sheet.SetUpPage(
            sheet.Range(1, 1, lastRow, lastColumn),
            XLPageOrientation.Landscape,
            grades.Dealt.Paper,
            grades.Dealt.Cohort,
            grades.Dealt.LessonTitle
        );
        sheet.PageSetup.SetRowsToRepeatAtTop(GradebookGrid.ExerciseRow, GradebookGrid.OutOfRow);
        var beginnings = grid
            .Exercises.Select(exercise =>
                GradebookGrid.FirstPartColumn + grid.Answers.TakeWhile(answer => answer != exercise.Answers[0]).Count()
            )
            .Append(grid.LastPartColumn + 1);
        var last = sheet.SpreadOverPages(grades.Dealt.Paper, lastColumn, GradebookGrid.NameColumn, beginnings);
        sheet.Across(2, GradebookGrid.IdColumn, last, explanation).AsQuiet();
    }

    private static void WriteParts(IXLWorksheet sheet, GradebookGrid grid, GridLook look)
    {
        var column = GradebookGrid.FirstPartColumn;
        var height = TextHeight.Line;
        foreach (var exercise in grid.Exercises)
        {
            var over = sheet.Range(GradebookGrid.ExerciseRow, column, GradebookGrid.ExerciseRow, column + exercise.Answers.Count - 1);
            over.Merge();
            var name = string.Create(CultureInfo.InvariantCulture, $"{exercise.Number} {exercise.Exercise.Title}");
            over.FirstCell().SetText(name);
            over.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
            over.Style.Alignment.WrapText = true;
            var partWidth = Math.Max(look.PartWidth, ExerciseWidth / exercise.Answers.Count);
            height = Math.Max(height, TextHeight.Of(name, exercise.Answers.Count * partWidth));
            var group = sheet.Range(GradebookGrid.ExerciseRow, column, grid.LastStudentRow, column);
            group.Style.Border.LeftBorder = XLBorderStyleValues.Thin;
            group.Style.Border.LeftBorderColor = Palette.Line;
            foreach (var answer in exercise.Answers)
            {
                sheet.Column(column).Width = partWidth;
                sheet.Cell(GradebookGrid.TagRow, column).SetText(answer.Tag);
                sheet.Cell(GradebookGrid.OutOfRow, column).SetNumber(answer.Part.Points);
                foreach (var cell in sheet.Range(GradebookGrid.TagRow, column, grid.LastStudentRow, column).Cells())
                {
                    cell.Style.Alignment.Horizontal = look.PartAlignment;
                    if (look.PartAlignment == XLAlignmentHorizontalValues.Left)
                        cell.Style.Alignment.Indent = 1;
                }

                column++;
            }
        }

        sheet.Row(GradebookGrid.ExerciseRow).Height = height;
    }

    private static void WriteStudents(IXLWorksheet sheet, ClassGrades grades)
    {
        var row = GradebookGrid.FirstStudentRow;
        foreach (var student in grades.Students)
        {
            sheet.Cell(row, GradebookGrid.NameColumn).SetText(student.Who.Shown).Wrapped();
            sheet.Cell(row, GradebookGrid.IdColumn).SetText(student.Who.Id).Wrapped().AsQuiet();
            var status = sheet
                .Cell(row, GradebookGrid.StatusColumn)
                .SetText(student.IsFromPaper ? "on paper" : OutcomeWords.Of(student.Status));
            if (student.Status != GradeStatus.Graded)
                status.AsAttention();
            sheet.Row(row).Height = Math.Max(
                18,
                Math.Max(TextHeight.Of(student.Who.Shown, NameWidth), TextHeight.Of(student.Who.Id, IdWidth))
            );
            row++;
        }
    }
}
