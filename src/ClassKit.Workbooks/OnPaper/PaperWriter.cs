using ClassKit.Exercises.Dealing;
using ClassKit.Grading.OnPaper;
using ClassKit.Wording.Cohorts;
using ClassKit.Workbooks.Look;
using ClassKit.Workbooks.Packages;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.OnPaper;

/// <summary>Makes the workbook that an instructor types answers into that students wrote on paper.</summary>
public static class PaperWriter
{
    private const string Explanation =
        "Type what is written, as it is written: numbers, letters, words. Tick ✓ where the working shows the method. Leave the row of whoever did not work on paper empty.";

    /// <summary>The workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    /// <param name="dealt">What was dealt to whom.</param>
    /// <param name="work">What was typed already, and stands in its cells; null for nothing.</param>
    public static byte[] Write(DealtClass dealt, IReadOnlyList<PaperWork>? work = null)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        var typed = (work ?? []).ToDictionary(one => one.Student.Who.Id);
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"Answers on paper: {dealt.LessonTitle}{ClassName.Behind(dealt.Cohort)}";
        var sheet = workbook.AddWorksheet(PaperGrid.Sheet);
        var grid = new PaperGrid(dealt);
        sheet.AsPage();
        sheet.Range(1, 1, 1, grid.LastColumn).AsTitle();
        sheet.Cell(1, PaperGrid.NameColumn).SetText(" On paper");
        sheet.Cell(1, PaperGrid.IdColumn).SetText(dealt.LessonTitle);
        sheet.Cell(PaperGrid.DealRow, PaperGrid.IdColumn).SetText(DealText.Footer(dealt)).AsQuiet();
        PaperHead.Write(sheet, grid);
        var row = PaperGrid.FirstStudentRow;
        var rows = new PaperRows(sheet, grid);
        foreach (var student in dealt.Students)
            rows.Write(student, row++, typed.GetValueOrDefault(student.Who.Id));
        sheet.SheetView.Freeze(PaperGrid.TagRow, PaperGrid.IdColumn);
        sheet.SetUpPage(
            sheet.Range(1, 1, row - 1, grid.LastColumn),
            XLPageOrientation.Landscape,
            dealt.Paper,
            dealt.Cohort,
            dealt.LessonTitle,
            DealText.Footer(dealt)
        );
        // Typed into at a screen, and only now and then printed.
        var last = sheet.SpreadOverPages(
            dealt.Paper,
            grid.LastColumn,
            PaperGrid.NameColumn,
            grid.Columns.GroupBy(column => column.Exercise).Select(exercise => exercise.First().Column)
        );
        sheet.Across(2, PaperGrid.IdColumn, last, Explanation).AsQuiet();
        sheet.PageSetup.SetRowsToRepeatAtTop(PaperGrid.ExerciseRow, PaperGrid.TagRow);
        sheet.ProtectFromSlips();
        return workbook.ToBytes();
    }
}
