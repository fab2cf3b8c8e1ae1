using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Results;
using ClassKit.Wording.Marking;
using ClassKit.Wording.Outcomes;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>
/// Which exercises of every student count, where the marking scheme counts only the best: in formulas over the sheet of points, whose
/// totals follow.
/// </summary>
/// <remarks>Four columns an exercise would be harder to rank than four blocks: places are ranked along a row.</remarks>
internal static class CountedSheet
{
    public const string Name = "Counted";
    private const int HeadRow = 4;
    private const int FirstBlockColumn = 3;
    private const double NumberWidth = 8;
    private static readonly string[] Blocks = ["Place", "Share", "Points", "Out of"];

    public static void Write(XLWorkbook workbook, ClassGrades grades, GradebookGrid grid)
    {
        if (grades.Dealt.Marking.Total.BestExercises is not { } best)
            return;
        var sheet = workbook.AddWorksheet(Name);
        var last = LastColumn(grid);
        sheet.AsPage();
        sheet.Range(1, 1, 1, last).AsTitle();
        sheet.Cell(1, 1).SetText(" Exercises that count");
        sheet.Column(1).Width = GridHead.NameWidth;
        sheet.Column(2).Width = GridHead.IdWidth;
        WriteHeads(sheet, grid, last);
        for (var index = 0; index < grades.Students.Count; index++)
            WriteStudent(sheet, grades.Students[index].Who, grid, GradebookGrid.FirstStudentRow + index, last);

        var places = sheet.Range(
            GradebookGrid.FirstStudentRow,
            FirstBlockColumn,
            grid.LastStudentRow,
            FirstBlockColumn + grid.Exercises.Count - 1
        );
        places
            .AddConditionalFormat()
            .WhenEqualOrLessThan(best)
            .Fill.SetBackgroundColor(XLColor.FromHtml(OutcomeTones.Ground(OutcomeTone.Good)));
        sheet.SheetView.Freeze(GradebookGrid.OutOfRow, GradebookGrid.NameColumn);
        sheet.TabColor = Palette.Band;

        // Points and what they are out of stand on the first sheet; in print they would make the places too small to read.
        sheet.SetUpPage(
            sheet.Range(1, 1, grid.LastStudentRow, Column(grid, 2, 0) - 1),
            XLPageOrientation.Landscape,
            grades.Dealt.Paper,
            grades.Dealt.Cohort,
            grades.Dealt.LessonTitle
        );
        sheet.PageSetup.SetRowsToRepeatAtTop(HeadRow, GradebookGrid.OutOfRow);
        var lastOfFirst = sheet.SpreadOverPages(grades.Dealt.Paper, Column(grid, 2, 0) - 1, 1);
        sheet
            .Across(
                2,
                2,
                lastOfFirst,
                $"{TotalRuleWords.Of(grades.Dealt.Marking.Total)} Exercises are placed by the share of their points that was earned; of two alike the first is placed before the other."
            )
            .AsQuiet();
    }

    /// <summary>The formula, without its <c>=</c>, of what a row's counted exercises earned or are worth.</summary>
    public static string Sum(GradebookGrid grid, int row, int best, bool isOutOf) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"SUMIF({Name}!{Block(grid, 0, row)},\"<={best}\",{Name}!{Block(grid, isOutOf ? 3 : 2, row)})"
        );

    /// <summary>The places of an exercise, one below the other, in the order of the sheet of points.</summary>
    public static string PlacesOf(GradebookGrid grid, int exercise)
    {
        var column = Column(grid, 0, exercise);
        return $"{Name}!{Fixed(GradebookGrid.FirstStudentRow)}:{Fixed(grid.LastStudentRow)}";

        string Fixed(int row) => string.Create(CultureInfo.InvariantCulture, $"${CellAddress.ColumnLetters(column)}${row}");
    }

    private static int LastColumn(GradebookGrid grid) => FirstBlockColumn + (Blocks.Length * grid.Exercises.Count) - 1;

    private static int Column(GradebookGrid grid, int block, int exercise) => FirstBlockColumn + (block * grid.Exercises.Count) + exercise;

    private static string Block(GradebookGrid grid, int block, int row) =>
        $"{Cell(Column(grid, block, 0), row, isColumnFixed: true)}:{Cell(Column(grid, block, grid.Exercises.Count - 1), row, isColumnFixed: true)}";

    private static string Cell(int column, int row, bool isColumnFixed = false) =>
        (isColumnFixed ? "$" : "") + CellAddress.ColumnLetters(column) + row.ToString(CultureInfo.InvariantCulture);

    private static void WriteHeads(IXLWorksheet sheet, GradebookGrid grid, int last)
    {
        var exercises = grid.Exercises;
        sheet.Range(HeadRow, 1, GradebookGrid.OutOfRow, last).AsTableHead();
        sheet.Cell(GradebookGrid.TagRow, 1).SetText("Student");
        sheet.Cell(GradebookGrid.TagRow, 2).SetText("Id");
        for (var block = 0; block < Blocks.Length; block++)
        {
            var over = sheet.Range(HeadRow, Column(grid, block, 0), HeadRow, Column(grid, block, exercises.Count - 1)).Merge();
            over.FirstCell().SetText(Blocks[block]);
            over.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
            var group = sheet.Range(HeadRow, Column(grid, block, 0), grid.LastStudentRow, Column(grid, block, 0));
            group.Style.Border.LeftBorder = XLBorderStyleValues.Thin;
            group.Style.Border.LeftBorderColor = Palette.Line;
            for (var index = 0; index < exercises.Count; index++)
            {
                var column = Column(grid, block, index);
                sheet.Column(column).Width = NumberWidth;
                sheet.Cell(GradebookGrid.TagRow, column).SetText($"Ex. {exercises[index].Number}").Style.Alignment.Horizontal =
                    XLAlignmentHorizontalValues.Right;
            }
        }
    }

    private static void WriteStudent(IXLWorksheet sheet, Student student, GradebookGrid grid, int row, int last)
    {
        var exercises = grid.Exercises;
        sheet.Cell(row, 1).SetText(student.Shown).Wrapped();
        sheet.Cell(row, 2).SetText(student.Id).Wrapped().AsQuiet();
        sheet.Row(row).Height = Math.Max(
            18,
            Math.Max(TextHeight.Of(student.Shown, GridHead.NameWidth), TextHeight.Of(student.Id, GridHead.IdWidth))
        );
        var part = GradebookGrid.FirstPartColumn;
        for (var index = 0; index < exercises.Count; index++)
        {
            var count = exercises[index].Answers.Count;
            var parts = OnPoints(GradebookGrid.Along(row, part, part + count - 1));
            var worth = OnPoints(GradebookGrid.Along(GradebookGrid.OutOfRow, part, part + count - 1, isRowFixed: true));
            part += count;
            var (place, share, points, outOf) = (
                Column(grid, 0, index),
                Column(grid, 1, index),
                Column(grid, 2, index),
                Column(grid, 3, index)
            );
            sheet.Cell(row, points).SetFormulaA1($"SUM({parts})");
            sheet.Cell(row, outOf).SetFormulaA1($"SUMIF({parts},\">=0\",{worth})");
            sheet
                .Cell(row, share)
                .SetFormulaA1(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"IF({Cell(outOf, row)}=0,\"\",ROUND({Cell(points, row)}/{Cell(outOf, row)},{Total.ShareDecimals}))"
                    )
                )
                .Style.NumberFormat.Format = "0 %";
            var before = $"{Cell(Column(grid, 1, 0), row, isColumnFixed: true)}:{Cell(share, row)}";
            sheet
                .Cell(row, place)
                .SetFormulaA1(
                    $"IF({Cell(share, row)}=\"\",\"\",RANK({Cell(share, row)},{Block(grid, 1, row)})+COUNTIF({before},{Cell(share, row)})-1)"
                );
        }

        sheet.Range(row, 1, row, last).AsTableRow();
        sheet.Range(row, FirstBlockColumn, row, last).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
    }

    private static string OnPoints(string range) => $"{GradebookGrid.PointsSheet}!{range}";
}
