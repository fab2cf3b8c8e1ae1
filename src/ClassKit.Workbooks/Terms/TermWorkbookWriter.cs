using ClassKit.Terms.Grades;
using ClassKit.Terms.Work;
using ClassKit.Wording.Cohorts;
using ClassKit.Workbooks.Packages;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Terms;

/// <summary>Makes the workbook of a term: marks as typed, and grades by the rule in live formulas over them.</summary>
/// <remarks>
/// Marks, weights, the scale and the numbers of the rule can be changed: grades follow. What every formula comes to is stored too.
/// </remarks>
public static class TermWorkbookWriter
{
    /// <summary>The workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    /// <param name="term">The term.</param>
    /// <param name="grades">Its grades: for what single criteria earned, which is not typed as marks.</param>
    public static byte[] Write(SchoolTerm term, IReadOnlyList<TermGrade> grades) =>
        PackageNormalizer.NormalizeWithValues(WithoutValues(term, grades));

    /// <summary>The same with formulas alone, whose values whatever opens it must compute.</summary>
    internal static byte[] WithoutValues(SchoolTerm term, IReadOnlyList<TermGrade> grades)
    {
        ArgumentNullException.ThrowIfNull(term);
        ArgumentNullException.ThrowIfNull(grades);
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"{term.Title}{ClassName.Behind(term.Class.Cohort)}";
        var grid = new TermGrid(term, grades);
        TermGradesSheet.Write(workbook, grid);
        TermMarksSheet.Write(workbook, grid);
        TermSharesSheet.Write(workbook, grid, grades);
        TermRuleSheet.Write(workbook, term);
        workbook.Worksheet(1).SetTabActive().SetTabSelected();
        return workbook.Saved();
    }
}
