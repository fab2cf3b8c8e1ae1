using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Results;
using ClassKit.Wording.Numbers;
using ClassKit.Wording.Outcomes;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>
/// The first sheet: the class on one page, how it did in a line, each student's total and percent beside the name, then the points of each
/// exercise on the tint of how much of it was earned.
/// </summary>
/// <remarks>
/// Everything is looked up by the student's id on the sheet of points, so that points typed there show here, and either sheet can be
/// sorted.
/// </remarks>
internal static class ClassSheet
{
    public const string Name = "Class";

    /// <summary>Other words than over the ids of the sheet of points, which is known by its own when somebody renamed it.</summary>
    private const string IdHead = "Student id";
    private const int StudentColumn = 1;
    private const int PercentColumn = 2;
    private const int TotalColumn = 3;
    private const int OutOfColumn = 4;
    private const int FirstExerciseColumn = 5;
    private const int FactsRow = 2;
    private const int KeyRow = 3;
    private const int HeadRow = 4;
    private const int FirstRow = 5;

    /// <summary>Closer than other lists, in points: a class of two dozen stands on one side.</summary>
    private const double RowHeight = 16.5;

    private const double NumberWidth = 8.5;
    private const double ExerciseWidth = 10.5;
    private const double LeastExerciseWidth = 7.5;
    private const double StatusWidth = NumberWidth + 3.5;
    private const double UndecidedWidth = NumberWidth + 1;

    public static void Write(XLWorkbook workbook, ClassGrades grades, GradebookGrid grid)
    {
        var sheet = workbook.AddWorksheet(Name, 1);
        sheet.AsPage();
        var status = FirstExerciseColumn + grid.Exercises.Count;
        var (undecided, id) = (status + 1, status + 2);
        var last = FirstRow + Math.Max(grades.Students.Count, 1) - 1;
        sheet.Range(1, 1, 1, id).AsTitle();
        sheet.Cell(1, 1).SetText($" {(grades.Dealt.Cohort.Length == 0 ? "Class" : grades.Dealt.Cohort)}: {grades.Dealt.LessonTitle}");
        WriteHeads(sheet, grid, status, undecided, id);
        for (var index = 0; index < grades.Students.Count; index++)
            WriteStudent(sheet, grades.Students[index], grid, FirstRow + index, status, undecided, id);

        WriteFacts(sheet, grades.Students.Count, Range(PercentColumn, FirstRow, last), Range(undecided, FirstRow, last));
        WriteWorth(sheet, grid, grades.Dealt.Marking.Total.BestExercises, last, id);
        WriteTints(sheet, grid, grades.Dealt.Marking.Total.BestExercises is not null, last, id);
        WriteMeans(sheet, last, status, id);
        sheet.SheetView.Freeze(HeadRow, StudentColumn);
        sheet.TabColor = Palette.Answer;
        // Ids are for the formulas: on paper a name is enough.
        sheet.SetUpPage(
            sheet.Range(1, 1, last + 1, undecided),
            grid.Exercises.Count > 4 ? XLPageOrientation.Landscape : XLPageOrientation.Portrait,
            grades.Dealt.Paper,
            grades.Dealt.Cohort,
            grades.Dealt.LessonTitle
        );
        sheet.PageSetup.SetRowsToRepeatAtTop(HeadRow, HeadRow);
        sheet.SpreadOverPages(grades.Dealt.Paper, undecided, StudentColumn);
    }

    private static void WriteFacts(IXLWorksheet sheet, int students, string percents, string undecided)
    {
        var shares = string.Join(
            "&",
            new[] { ("; class mean ", "AVERAGE"), (", median ", "MEDIAN"), (", lowest ", "MIN"), (", highest ", "MAX") }.Select(fact =>
                $"\"{fact.Item1}\"&TEXT({fact.Item2}({percents}),\"0 %\")"
            )
        );
        sheet
            .Cell(FactsRow, 1)
            .SetFormulaA1(
                $"COUNT({percents})&\" of {students.ToString(CultureInfo.InvariantCulture)} have points\"&IF(COUNT({percents})=0,\"\",{shares})&IF(SUM({undecided})=0,\"\",\"; answers to decide: \"&SUM({undecided}))"
            )
            .AsQuiet();
        sheet.Row(FactsRow).Height = 20;
    }

    /// <summary>
    /// Of how many points each student's exercises count, behind the ids and hidden, for the tints: without what is left to decide, and
    /// empty where the marking scheme counts only others.
    /// </summary>
    private static void WriteWorth(IXLWorksheet sheet, GradebookGrid grid, int? best, int last, int id)
    {
        for (var index = 0; index < grid.Exercises.Count; index++)
        {
            var column = id + 1 + index;
            sheet.Cell(HeadRow, column).SetText($"Ex. {grid.Exercises[index].Number} counts of").AsQuiet();
            for (var row = FirstRow; row <= last; row++)
            {
                var found = Found(grid, id, row);
                var (first, to) = Parts(grid, grid.Exercises[index]);
                var points = $"INDEX({OnPoints(grid, first, to)},{found},0)";
                var worth = $"{GradebookGrid.PointsSheet}!{Range(first, GradebookGrid.OutOfRow, GradebookGrid.OutOfRow, to)}";
                var counts = string.Create(CultureInfo.InvariantCulture, $"SUMIF({points},\">=0\",{worth})");
                if (best is { } most)
                    counts = string.Create(
                        CultureInfo.InvariantCulture,
                        $"IF(N(INDEX({CountedSheet.PlacesOf(grid, index)},{found}))>{most},\"\",{counts})"
                    );
                sheet.Cell(row, column).SetFormulaA1($"IF(COUNT({points})=0,\"\",{counts})");
            }
            sheet.Column(column).Hide();
        }
    }

    /// <summary>
    /// Whatever is typed on the sheet of points: tints follow what counts, and the head says of how many points, for print without colour.
    /// </summary>
    private static void WriteTints(IXLWorksheet sheet, GradebookGrid grid, bool onlySomeCount, int last, int id)
    {
        foreach (
            var (at, (words, tone)) in new[]
            {
                ("all points", OutcomeTone.Good),
                ("some", OutcomeTone.Warn),
                ("none", OutcomeTone.Bad),
            }.Index()
        )
        {
            var key = sheet.Cell(KeyRow, FirstExerciseColumn + at).SetText(words);
            key.Style.Fill.BackgroundColor = Ground(tone);
            (key.Style.Font.Bold, key.Style.Font.Italic) = Face(tone);
            key.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
        }
        if (onlySomeCount)
        {
            var key = sheet.Cell(KeyRow, FirstExerciseColumn + 3).SetText("not counted").AsQuiet();
            key.Style.Font.Strikethrough = true;
            key.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
        }

        for (var index = 0; index < grid.Exercises.Count; index++)
        {
            var column = FirstExerciseColumn + index;
            var points = sheet.Range(FirstRow, column, last, column);
            var (cell, all) = (At(column), At(id + 1 + index));
            foreach (
                var (holds, tone) in new[]
                {
                    ($"{cell}>={all}", OutcomeTone.Good),
                    ($"{cell}>0,{cell}<{all}", OutcomeTone.Warn),
                    ($"{cell}=0", OutcomeTone.Bad),
                }
            )
            {
                var tinted = points.AddConditionalFormat().WhenIsTrue($"AND(ISNUMBER({cell}),ISNUMBER({all}),{holds})");
                tinted.Fill.SetBackgroundColor(Ground(tone));
                (tinted.Font.Bold, tinted.Font.Italic) = Face(tone);
            }
            if (onlySomeCount)
            {
                var left = points.AddConditionalFormat().WhenIsTrue($"AND(ISNUMBER({cell}),NOT(ISNUMBER({all})))");
                left.Font.SetFontColor(Palette.Quiet);
                left.Font.Strikethrough = true;
            }
        }

        static string At(int column) => CellAddress.ColumnLetters(column) + FirstRow.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>Tints are alike in print without colour: letters tell them apart there.</summary>
    private static (bool Bold, bool Italic) Face(OutcomeTone tone) => (tone == OutcomeTone.Bad, tone == OutcomeTone.Warn);

    private static decimal OutOf(ExerciseLayout exercise) => exercise.Answers.Sum(answer => answer.Part.Points);

    private static XLColor Ground(OutcomeTone tone) => XLColor.FromHtml(OutcomeTones.Ground(tone));

    private static void WriteMeans(IXLWorksheet sheet, int last, int status, int id)
    {
        var row = last + 1;
        sheet.Cell(row, StudentColumn).SetText("Class mean");
        for (var column = PercentColumn; column < status; column++)
        {
            if (column == OutOfColumn)
                continue;
            var students = Range(column, FirstRow, last);
            var mean = sheet.Cell(row, column).SetFormulaA1($"IF(COUNT({students})=0,\"\",AVERAGE({students}))");
            mean.Style.NumberFormat.Format = column == PercentColumn ? "0 %" : "0.0";
            mean.Style.Alignment.Horizontal =
                column < FirstExerciseColumn ? XLAlignmentHorizontalValues.Right : XLAlignmentHorizontalValues.Center;
        }

        var means = sheet.Range(row, 1, row, id);
        means.Style.Font.Bold = true;
        means.Style.Border.TopBorder = XLBorderStyleValues.Thin;
        means.Style.Border.TopBorderColor = Palette.Crust;
        sheet.Row(row).Height = 20;
    }

    private static void WriteHeads(IXLWorksheet sheet, GradebookGrid grid, int status, int undecided, int id)
    {
        List<(int Column, string Text, double Width, bool IsNumber)> heads =
        [
            (StudentColumn, "Student", GridHead.NameWidth, false),
            (PercentColumn, "Percent", NumberWidth, true),
            (TotalColumn, "Total", NumberWidth, true),
            (OutOfColumn, "Out of", NumberWidth, true),
            .. grid.Exercises.Select(
                (exercise, index) =>
                    (
                        FirstExerciseColumn + index,
                        $"{exercise.Exercise.Title}\nof {NumberText.Points(OutOf(exercise))}",
                        WidthOf(grid),
                        true
                    )
            ),
            (status, "Status", StatusWidth, false),
            (undecided, "To decide", UndecidedWidth, false),
            (id, IdHead, GridHead.IdWidth, false),
        ];
        sheet.Range(HeadRow, 1, HeadRow, id).AsTableHead();
        foreach (var (column, text, width, isNumber) in heads)
        {
            sheet.Column(column).Width = width;
            var head = sheet.Cell(HeadRow, column).SetText(text).Wrapped();
            head.Style.Alignment.Vertical = XLAlignmentVerticalValues.Bottom;
            if (column >= FirstExerciseColumn && column < status)
                head.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
            else if (isNumber)
                head.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
            else if (column != StudentColumn)
                head.Style.Alignment.Indent = 1;
        }

        sheet.Row(HeadRow).Height = heads.Max(head => TextHeight.Of(head.Text, head.Width));
    }

    /// <summary>This sheet alone is printed unless somebody asks for more: exercises give way where that keeps it one page wide.</summary>
    private static double WidthOf(GradebookGrid grid)
    {
        var others = GridHead.NameWidth + 3 * NumberWidth + StatusWidth + UndecidedWidth;
        var room = PageLook.ReadableWidth(grid.Exercises.Count + FirstExerciseColumn + 1) - others;
        return Math.Clamp(Math.Floor(2 * room / grid.Exercises.Count) / 2, LeastExerciseWidth, ExerciseWidth);
    }

    private static void WriteStudent(
        IXLWorksheet sheet,
        StudentGrade student,
        GradebookGrid grid,
        int row,
        int status,
        int undecided,
        int id
    )
    {
        var total = grid.LastPartColumn + 1;
        var found = Found(grid, id, row);
        sheet.Cell(row, StudentColumn).SetText(student.Who.Shown).Wrapped().Style.Font.Bold = true;
        sheet.Cell(row, PercentColumn).SetFormulaA1($"INDEX({OnPoints(grid, total + 2)},{found})").Style.NumberFormat.Format = "0 %";
        sheet.Cell(row, TotalColumn).SetFormulaA1($"INDEX({OnPoints(grid, total)},{found})");
        sheet.Cell(row, OutOfColumn).SetFormulaA1($"INDEX({OnPoints(grid, total + 1)},{found})");
        sheet.Range(row, PercentColumn, row, OutOfColumn).Style.Font.Bold = true;
        for (var index = 0; index < grid.Exercises.Count; index++)
            WriteExercise(sheet.Cell(row, FirstExerciseColumn + index), grid, grid.Exercises[index], found);

        var word = sheet.Cell(row, status).SetText(OutcomeWords.Of(student.Status));
        if (student.Status != GradeStatus.Graded)
            word.AsAttention();
        sheet
            .Cell(row, undecided)
            .SetFormulaA1(
                $"COUNTIF(INDEX({OnPoints(grid, GradebookGrid.FirstPartColumn, grid.LastPartColumn)},{found},0),\"~{PointsSheet.Undecided}\")"
            )
            .Style.NumberFormat.Format = "0;-0;";
        sheet.Cell(row, id).SetText(student.Who.Id).AsQuiet();
        sheet.Range(row, PercentColumn, row, OutOfColumn).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        sheet.Range(row, FirstExerciseColumn, row, status - 1).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
        sheet.Cell(row, status).Style.Alignment.Indent = 1;
        sheet.Cell(row, undecided).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
        sheet.Cell(row, id).Style.Alignment.Indent = 1;
        sheet.Range(row, 1, row, id).AsTableRow();
        sheet.Row(row).Height = Math.Max(RowHeight, TextHeight.Of(student.Who.Shown, GridHead.NameWidth));
    }

    /// <summary>An exercise's points, empty where none of its parts has any: not asked, not handed in, or all still to decide.</summary>
    private static void WriteExercise(IXLCell cell, GradebookGrid grid, ExerciseLayout exercise, string found)
    {
        var (first, last) = Parts(grid, exercise);
        var points = $"INDEX({OnPoints(grid, first, last)},{found},0)";
        cell.SetFormulaA1($"IF(COUNT({points})=0,\"\",SUM({points}))");
    }

    /// <summary>A row's student on the sheet of points, counted from the first.</summary>
    private static string Found(GradebookGrid grid, int id, int row) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"MATCH({CellAddress.ColumnLetters(id)}{row},{OnPoints(grid, GradebookGrid.IdColumn)},0)"
        );

    /// <summary>The columns of an exercise's first and last part on the sheet of points.</summary>
    private static (int First, int Last) Parts(GradebookGrid grid, ExerciseLayout exercise)
    {
        var first = GradebookGrid.FirstPartColumn + grid.Answers.TakeWhile(answer => answer != exercise.Answers[0]).Count();
        return (first, first + exercise.Answers.Count - 1);
    }

    private static string OnPoints(GradebookGrid grid, int column, int? to = null) =>
        $"{GradebookGrid.PointsSheet}!{Range(column, GradebookGrid.FirstStudentRow, grid.LastStudentRow, to)}";

    private static string Range(int column, int first, int last, int? to = null) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"${CellAddress.ColumnLetters(column)}${first}:${CellAddress.ColumnLetters(to ?? column)}${last}"
        );
}
