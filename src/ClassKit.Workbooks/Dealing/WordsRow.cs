using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>
/// The row of an answer in own words: the question with what it is worth, and one cell as wide as answer, unit and note together.
/// </summary>
internal static class WordsRow
{
    /// <summary>Six lines, in points.</summary>
    private const double LeastHeight = 96;

    /// <summary>Writes the row.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="layout">The exercise.</param>
    /// <param name="place">The answer.</param>
    /// <param name="width">How wide the question may be, in characters.</param>
    public static void Write(IXLWorksheet sheet, ExerciseLayout layout, AnswerPlace place, double width)
    {
        var row = place.Address.Row;
        var asked = $"{place.Part.Ask}\n{AnswerNote.Of(place.Part)}";
        sheet.Cell(row, layout.Columns.Tag).SetText(place.Tag).AsTag();
        sheet.Cell(row, layout.Columns.Label).SetText(asked).Wrapped();
        var room = sheet.Range(row, layout.Columns.Value, row, layout.Columns.Last);
        foreach (var cell in room.Cells())
            cell.AsAnswer();
        room.Merge();
        room.Style.Border.OutsideBorder = XLBorderStyleValues.Medium;
        room.Style.Border.OutsideBorderColor = Palette.Answer;
        var answer = room.FirstCell();
        answer.Wrapped();
        answer.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Left;
        answer.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        answer.Style.Font.Bold = false;
        // Text whatever it begins with: a dash or an equals sign makes no formula of a sentence.
        answer.Style.NumberFormat.Format = "@";
        AnswerPrompt.Put(answer, place);
        sheet.Row(row).Height = Math.Max(LeastHeight, TextHeight.Of(asked, width));
        sheet.Workbook.NameCell(place.DefinedName, place.Address);
    }
}
