using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.Wording.Cohorts;
using ClassKit.Workbooks.Packages;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>
/// Makes the instructor's workbook of a graded class: points with live totals, outcomes, exercises that count, parts, every answer,
/// corrections, flags, files.
/// </summary>
/// <remarks>
/// Points can be overtyped: totals, percentages and the class follow. What every formula comes to is
/// stored too, for programs that only show. Names, file names and students' formulas are texts, whatever they start with.
/// </remarks>
public static class GradebookWriter
{
    /// <summary>The workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    public static byte[] Write(ClassGrades grades, ClassSummary summary)
    {
        ArgumentNullException.ThrowIfNull(grades);
        ArgumentNullException.ThrowIfNull(summary);
        return PackageNormalizer.NormalizeWithValues(Save(grades, summary));
    }

    private static byte[] Save(ClassGrades grades, ClassSummary summary)
    {
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"Gradebook: {grades.Dealt.LessonTitle}{ClassName.Behind(grades.Dealt.Cohort)}";
        var grid = new GradebookGrid(grades.Dealt, grades.Students.Count);
        PointsSheet.Write(workbook, grades, grid);
        OutcomesSheet.Write(workbook, grades, grid);
        CountedSheet.Write(workbook, grades, grid);
        PartsSheet.Write(workbook, grades, summary, grid);
        AnswersSheet.Write(workbook, grades, grid);
        CorrectionsSheet.Write(workbook, grades, grid);
        FlagsSheet.Write(workbook, grades);
        FilesSheet.Write(workbook, grades);
        ClassSheet.Write(workbook, grades, grid);

        // Programs that print the sheet in view print the class, unless another is chosen.
        workbook.Worksheet(1).SetTabActive().SetTabSelected();
        return workbook.Saved();
    }
}
