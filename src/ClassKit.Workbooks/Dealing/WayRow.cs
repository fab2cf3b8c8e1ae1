using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>The line under an exercise's title: how many of its answers are there, and the ways back and on.</summary>
internal static class WayRow
{
    private const double Height = 24;

    public static void Write(IXLWorksheet sheet, PracticeLayout all, ExerciseLayout layout, bool isShort)
    {
        var row = layout.WayRow;
        sheet.Row(row).Height = Height;
        sheet.Cell(row, layout.Columns.Label).SetFormulaA1(Progress(layout)).AsQuiet();

        var place = all.Exercises.TakeWhile(exercise => exercise.Number != layout.Number).Count();
        var back =
            place == 0
                ? ("‹ " + all.Start.Sheet, StartOf(all.Start.Sheet))
                : ("‹ " + Name(all.Exercises[place - 1], isShort), TopOf(all.Exercises[place - 1]));
        Link(sheet.Cell(row, layout.Columns.Value), back);
        if (place + 1 < all.Exercises.Count)
        {
            var next = sheet.Cell(row, layout.Columns.Last);
            next.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
            Link(next, (Name(all.Exercises[place + 1], isShort) + " ›", TopOf(all.Exercises[place + 1])));
        }
    }

    /// <summary>Counts what is typed and says nothing of whether it is right.</summary>
    private static string Progress(ExerciseLayout layout)
    {
        var (first, last) = (layout.Answers[0].Address, layout.Answers[^1].Address);
        var column = CellAddress.ColumnLetters(first.Column);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"=COUNTA({column}{first.Row}:{column}{last.Row})&\" of {layout.Answers.Count} answered\""
        );
    }

    /// <summary>By its number alone where columns are narrow: the two titles of a row would run into each other.</summary>
    private static string Name(ExerciseLayout exercise, bool isShort) =>
        isShort
            ? exercise.Number.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{exercise.Number} {exercise.Exercise.Title}");

    private static string StartOf(string sheet) => $"'{sheet}'!A1";

    /// <summary>Where a link to an exercise leads: its title.</summary>
    public static string TopOf(ExerciseLayout exercise) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"'{exercise.Sheet}'!{CellAddress.ColumnLetters(exercise.Columns.Tag)}{exercise.TitleRow}"
        );

    private static void Link(IXLCell cell, (string Words, string To) way)
    {
        cell.SetText(way.Words).Hyperlink = new XLHyperlink(way.To, "Go there");
        cell.Style.Font.FontColor = Palette.Answer;
    }
}
