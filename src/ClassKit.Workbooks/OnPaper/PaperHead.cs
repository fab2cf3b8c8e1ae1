using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Answers;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.OnPaper;

/// <summary>The head of the sheet for answers on paper: exercises over their parts, tags, what is asked for.</summary>
internal static class PaperHead
{
    public const double NameWidth = 24;
    public const double IdWidth = 19;
    private const double NumberWidth = 11;
    private const double LetterWidth = 7;
    private const double WordsWidth = 40;
    private const double TickWidth = 6;
    private const double LeastExerciseWidth = 18;

    public static void Write(IXLWorksheet sheet, PaperGrid grid)
    {
        sheet.Column(PaperGrid.NameColumn).Width = NameWidth;
        sheet.Column(PaperGrid.IdColumn).Width = IdWidth;
        sheet.Range(PaperGrid.ExerciseRow, 1, PaperGrid.TagRow, grid.LastColumn).AsTableHead();
        sheet.Cell(PaperGrid.TagRow, PaperGrid.NameColumn).SetText(PaperGrid.NameHead);
        sheet.Cell(PaperGrid.TagRow, PaperGrid.IdColumn).SetText(PaperGrid.IdHead);
        foreach (var column in grid.Columns)
            Part(sheet, column);
        var height = TextHeight.Line;
        foreach (var columns in grid.Columns.GroupBy(column => column.Exercise))
            height = Math.Max(height, Exercise(sheet, [.. columns]));
        sheet.Row(PaperGrid.ExerciseRow).Height = height;
    }

    private static double Exercise(IXLWorksheet sheet, IReadOnlyList<PaperColumn> columns)
    {
        var (first, last) = (columns[0].Column, columns[^1].LastColumn);
        var width = Enumerable.Range(first, last - first + 1).Sum(column => sheet.Column(column).Width);
        if (width < LeastExerciseWidth)
        {
            sheet.Column(first).Width += LeastExerciseWidth - width;
            width = LeastExerciseWidth;
        }
        var over = sheet.Range(PaperGrid.ExerciseRow, first, PaperGrid.ExerciseRow, last);
        over.Merge();
        var name = string.Create(CultureInfo.InvariantCulture, $"{columns[0].Exercise.Number} {columns[0].Exercise.Exercise.Title}");
        over.FirstCell().SetText(name);
        over.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
        over.Style.Alignment.WrapText = true;
        return TextHeight.Of(name, width);
    }

    private static void Part(IXLWorksheet sheet, PaperColumn column)
    {
        var part = column.Answer.Part;
        sheet.Column(column.Column).Width =
            part.InWords is not null ? WordsWidth
            : part.Choice is not null ? LetterWidth
            : NumberWidth;
        sheet.Cell(PaperGrid.TagRow, column.Column).SetText(column.Answer.Tag);
        sheet.Cell(PaperGrid.UnitRow, column.Column).SetText(Asked(part)).AsQuiet();
        if (column.TickColumn is { } tick)
        {
            sheet.Column(tick).Width = TickWidth;
            sheet.Cell(PaperGrid.TagRow, tick).SetText(PaperGrid.TickHead(column.Answer));
        }
        sheet.Range(PaperGrid.UnitRow, column.Column, PaperGrid.TagRow, column.LastColumn).Style.Alignment.Horizontal =
            XLAlignmentHorizontalValues.Center;
    }

    private static string Asked(Part part) =>
        part switch
        {
            { InWords: not null } => $"words, {TypedWords.Most} letters at most",
            { Choice: { } choice } => $"A–{(char)('A' + choice.From.Options.Count - 1)}",
            _ => part.Unit.Sign,
        };
}
