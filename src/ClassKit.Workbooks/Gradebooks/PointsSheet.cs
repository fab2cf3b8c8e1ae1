using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Results;
using ClassKit.Wording.Marking;
using ClassKit.Wording.Outcomes;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>Every student's points with live totals.</summary>
internal static class PointsSheet
{
    public const string Undecided = "?";
    private const double PartWidth = 5;
    private const double NumberWidth = 8.5;
    private const double TextWidth = 28;

    public static void Write(XLWorkbook workbook, ClassGrades grades, GradebookGrid grid)
    {
        var sheet = workbook.AddWorksheet(GradebookGrid.PointsSheet);
        var total = grid.LastPartColumn + 1;
        var (outOf, percent, late, file, flags) = (total + 1, total + 2, total + 3, total + 4, total + 5);
        GridHead.Write(sheet, grades, grid, new("Gradebook", PartWidth, XLAlignmentHorizontalValues.Center, flags));
        WriteHeads(sheet, total, outOf, percent, late, file, flags);
        for (var index = 0; index < grades.Students.Count; index++)
            WriteStudent(sheet, grades.Students[index], grid, GradebookGrid.FirstStudentRow + index, grades.Dealt.Marking.Total);
        WriteMeans(sheet, grid, percent, flags);

        sheet.TabColor = Palette.Band;

        // Files and flags have sheets of their own to print.
        GridHead.SetUpPages(
            sheet,
            grades,
            grid,
            $"{(grades.Dealt.Cohort.Length == 0 ? "Marking scheme" : $"{grades.Dealt.Cohort} · marking scheme")}: {grades.Dealt.Marking.Title} · {Undecided} marks what is left to you, a formula that could not be evaluated or an answer in own words: look at it and type its points. Until then that part counts neither for nor against. Points in a frame are your corrections.{Said(grades.Dealt.Marking.Total)}{(grades.Dealt.IsSameForAll ? "" : grades.Dealt.HasOneSet ? " An empty cell was not asked." : " Students had different sets of equal weight: an empty cell was not asked.")}",
            grid.LastStudentRow + 1,
            late
        );
    }

    private static void WriteHeads(IXLWorksheet sheet, int total, int outOf, int percent, int late, int file, int flags)
    {
        (int Column, string Text, double Width, bool IsNumber)[] heads =
        [
            (total, "Total", NumberWidth, true),
            (outOf, "Out of", NumberWidth, true),
            (percent, "Percent", NumberWidth, true),
            (late, "Late off", NumberWidth, true),
            (file, "File", TextWidth, false),
            (flags, "Flags", TextWidth, false),
        ];
        foreach (var (column, text, width, isNumber) in heads)
        {
            sheet.Column(column).Width = width;
            var head = sheet.Cell(GradebookGrid.TagRow, column).SetText(text);
            if (isNumber)
                head.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
            else
                head.Style.Alignment.Indent = 1;
        }
    }

    private static void WriteStudent(IXLWorksheet sheet, StudentGrade student, GradebookGrid grid, int row, TotalRule rule)
    {
        foreach (var answer in student.Answers)
        {
            var cell = sheet.Cell(row, grid.ColumnOf(answer));
            if (answer.IsUndecided)
                cell.SetText(Undecided).AsAttention();
            else
                cell.SetNumber(answer.Points).AsOutcome(ToneOf(answer));
            if (answer.Correction is not null)
                cell.AsCorrected();
        }

        var total = grid.LastPartColumn + 1;
        var parts = grid.PartsOf(row);
        var (totalCell, outOfCell) = (Cell(total, row), Cell(total + 1, row));
        sheet
            .Cell(row, total)
            .SetFormulaA1(
                $"IF(COUNT({parts})=0,\"\",ROUND({Limited(Counted(grid, row, rule, isOutOf: false), rule)}*(1-N({Cell(total + 3, row)})),2))"
            );

        sheet.Cell(row, total + 1).SetFormulaA1($"IF(COUNT({parts})=0,\"\",{Limited(Counted(grid, row, rule, isOutOf: true), rule)})");
        sheet.Cell(row, total + 2).SetFormulaA1($"IF(N({outOfCell})=0,\"\",{totalCell}/{outOfCell})");
        sheet.Range(row, total, row, total + 2).Style.Font.Bold = true;
        sheet.Range(row, total, row, total + 2).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        sheet.Cell(row, total + 2).Style.NumberFormat.Format = "0 %";

        // A share typed here is taken off as well.
        if (student.Late is { Off: > 0 } late)
            sheet.Cell(row, total + 3).SetNumber(late.Off);
        sheet.Cell(row, total + 3).Style.NumberFormat.Format = "0 %";
        sheet.Cell(row, total + 3).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;

        sheet.Cell(row, total + 4).SetText(student.File ?? "").AsQuiet().Wrapped().Style.Alignment.Indent = 1;
        var flags = string.Join(", ", student.Flags.Select(flag => flag.Code).Distinct());
        sheet.Cell(row, total + 5).SetText(flags).Wrapped().Style.Alignment.Indent = 1;
        sheet.Range(row, 1, row, total + 5).AsTableRow();
        sheet.Row(row).Height = Math.Max(
            sheet.Row(row).Height,
            Math.Max(TextHeight.Of(student.File ?? "", TextWidth - 2), TextHeight.Of(flags, TextWidth - 2))
        );
    }

    /// <summary>The instructor's word is the last: what was corrected has the tint of the points that it has now.</summary>
    private static OutcomeTone ToneOf(AnswerGrade answer) =>
        answer.Correction is null ? OutcomeTones.Of(OutcomeText.Shown(answer.Outcome, answer.Part))
        : answer.Points >= answer.OutOf ? OutcomeTone.Good
        : answer.Points > 0 ? OutcomeTone.Warn
        : OutcomeTone.Bad;

    private static string Said(TotalRule rule) => TotalRuleWords.Of(rule) is { Length: > 0 } words ? $" {words}" : "";

    /// <summary>The formula of what the counted parts of a row earned or are worth.</summary>
    private static string Counted(GradebookGrid grid, int row, TotalRule rule, bool isOutOf)
    {
        if (rule.BestExercises is { } best)
            return CountedSheet.Sum(grid, row, best, isOutOf);
        var parts = grid.PartsOf(row);

        // Only parts with a number in them count, so that typing points over a question mark makes both sides whole.
        return isOutOf ? $"SUMIF({parts},\">=0\",{grid.PartsOf(GradebookGrid.OutOfRow, isRowFixed: true)})" : $"SUM({parts})";
    }

    private static string Limited(string sum, TotalRule rule) =>
        rule.PointsAtMost is { } most ? string.Create(CultureInfo.InvariantCulture, $"MIN({most},{sum})") : sum;

    private static void WriteMeans(IXLWorksheet sheet, GradebookGrid grid, int percent, int lastColumn)
    {
        var row = grid.LastStudentRow + 1;
        sheet.Cell(row, GradebookGrid.NameColumn).SetText("Class mean");
        for (var column = GradebookGrid.FirstPartColumn; column <= percent; column++)
        {
            if (column == percent - 1)
                continue;
            var students = grid.StudentsOf(column);
            sheet.Cell(row, column).SetFormulaA1($"IF(COUNT({students})=0,\"\",AVERAGE({students}))").Style.NumberFormat.Format =
                column == percent ? "0 %" : "0.0";
            sheet.Cell(row, column).Style.Alignment.Horizontal =
                column <= grid.LastPartColumn ? XLAlignmentHorizontalValues.Center : XLAlignmentHorizontalValues.Right;
        }

        var means = sheet.Range(row, 1, row, lastColumn);
        means.Style.Font.Bold = true;
        means.Style.Border.TopBorder = XLBorderStyleValues.Thin;
        means.Style.Border.TopBorderColor = Palette.Crust;
        sheet.Row(row).Height = 20;
    }

    private static string Cell(int column, int row) => CellAddress.ColumnLetters(column) + row.ToString(CultureInfo.InvariantCulture);
}
