using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>Writes the sheet of one exercise.</summary>
internal static class ExerciseSheet
{
    private const double TagWidth = 6;
    private const double LabelWidth = 46;
    private const double ValueWidth = 15;
    private const double UnitWidth = 11;
    private const double NoteWidth = 34;
    private const double AnswerRowHeight = 33;

    public static void Write(XLWorkbook workbook, DealtClass dealt, DealtStudent student, ExerciseLayout layout)
    {
        var sheet = workbook.AddWorksheet(layout.Sheet);
        sheet.AsPage();
        SetColumns(sheet);
        WriteTop(sheet, dealt, student, layout);
        WriteGivens(sheet, student, layout);
        WriteAnswers(sheet, layout);
        WriteScratch(sheet, layout);

        sheet.TabColor = layout.Number % 2 == 0 ? Palette.Crust : Palette.Band;
        sheet.SheetView.ZoomScale = 110;
        if (layout.Answers.Count > 0) CellAt(sheet, layout.Answers[0].Address).SetActive();
        var area = sheet.Range(1, PracticeColumns.Tag, layout.ScratchTo.Row, PracticeColumns.Note);
        sheet.SetUpPage(area, XLPageOrientation.Portrait, dealt.Paper, student.Who.Shown, dealt.LessonTitle, DealText.Footer(dealt));
        sheet.ProtectFromSlips();
    }

    private static void SetColumns(IXLWorksheet sheet)
    {
        sheet.Column(PracticeColumns.Tag).Width = TagWidth;
        sheet.Column(PracticeColumns.Label).Width = LabelWidth;
        sheet.Column(PracticeColumns.Value).Width = ValueWidth;
        sheet.Column(PracticeColumns.Unit).Width = UnitWidth;
        sheet.Column(PracticeColumns.Note).Width = NoteWidth;
    }

    private static void WriteTop(IXLWorksheet sheet, DealtClass dealt, DealtStudent student, ExerciseLayout layout)
    {
        var exercise = layout.Exercise;
        Row(sheet, ExerciseLayout.TitleRow).AsTitle();
        sheet.Cell(ExerciseLayout.TitleRow, PracticeColumns.Tag).SetText(
            string.Create(CultureInfo.InvariantCulture, $" {layout.Number}  {exercise.Title}"));

        var points = AnswerNote.Points(exercise.Parts.Sum(part => part.Points));
        sheet.Cell(ExerciseLayout.SubtitleRow, PracticeColumns.Tag).SetText(
            string.Create(CultureInfo.InvariantCulture, $"{student.Who.Shown} · {points} · about {exercise.Minutes} minutes{DealText.Behind(dealt)}")).AsQuiet();
        sheet.Row(ExerciseLayout.SubtitleRow).Height = 22;

        var text = ProblemOf(layout, student);
        var problem = Row(sheet, ExerciseLayout.ProblemRow);
        problem.Merge();
        problem.FirstCell().SetText(text).Wrapped();
        problem.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        sheet.Row(ExerciseLayout.ProblemRow).Height = ProblemHeight(text);
    }

    /// <summary>The problem as the student reads it.</summary>
    public static string ProblemOf(ExerciseLayout layout, DealtStudent student) =>
        PlainText.From(ProblemText.Fill(layout.Exercise, student.GivensOf(layout.Exercise.Id)));

    /// <summary>The height of the problem's row, in points.</summary>
    public static double ProblemHeight(string text) => TextHeight.Of(text, TagWidth + LabelWidth + ValueWidth + UnitWidth + NoteWidth);

    private static void WriteGivens(IXLWorksheet sheet, DealtStudent student, ExerciseLayout layout)
    {
        var heading = ExerciseLayout.GivensHeadingRow;
        WriteHeading(sheet, heading, "Given", "Value", "Unit", "");
        if (layout.Givens.Count == 0) return;

        var values = student.GivensOf(layout.Exercise.Id);
        foreach (var place in layout.Givens)
        {
            var row = place.Address.Row;
            sheet.Cell(row, PracticeColumns.Tag).SetText(place.Tag).AsTag();
            sheet.Cell(row, PracticeColumns.Label).SetText(place.Given.Label).Wrapped();
            var cell = CellAt(sheet, place.Address);
            cell.SetValue(values[place.Given.Id]);
            cell.AsGiven();
            cell.Style.NumberFormat.Format = NumberFormats.Of(place.Given);
            if (!AnswerUnit.IsPercent(place.Given.Unit)) WriteUnit(sheet, row, place.Given.Unit);
            sheet.Row(row).Height = Math.Max(20, TextHeight.Of(place.Given.Label, LabelWidth));
            sheet.Workbook.NameCell(place.DefinedName, place.Address);
        }
    }

    private static void WriteAnswers(IXLWorksheet sheet, ExerciseLayout layout)
    {
        WriteHeading(sheet, layout.AnswersHeadingRow, "Question", "Your answer", "Unit", "What counts");
        foreach (var place in layout.Answers)
        {
            var row = place.Address.Row;
            var note = AnswerNote.Of(place.Part);
            sheet.Cell(row, PracticeColumns.Tag).SetText(place.Tag).AsTag();
            sheet.Cell(row, PracticeColumns.Label).SetText(place.Part.Ask).Wrapped();
            var cell = CellAt(sheet, place.Address);
            cell.AsAnswer();
            if (NumberFormats.Of(place.Part) is { } format) cell.Style.NumberFormat.Format = format;
            WriteUnit(sheet, row, AnswerNote.Unit(place.Part));
            sheet.Cell(row, PracticeColumns.Note).SetText(note).Wrapped().AsQuiet();
            sheet.Row(row).Height = Math.Max(AnswerRowHeight, Math.Max(TextHeight.Of(place.Part.Ask, LabelWidth), TextHeight.Of(note, NoteWidth)));
            sheet.Workbook.NameCell(place.DefinedName, place.Address);
        }
    }

    private static void WriteScratch(IXLWorksheet sheet, ExerciseLayout layout)
    {
        WriteHeading(sheet, layout.ScratchHeadingRow, "Scratch area: yours to use as you like, not graded", "", "", "");
        sheet.Range(layout.ScratchFrom.Row, layout.ScratchFrom.Column, layout.ScratchTo.Row, layout.ScratchTo.Column).AsScratch();
    }

    private static void WriteHeading(IXLWorksheet sheet, int row, string label, string value, string unit, string note)
    {
        Row(sheet, row).AsHeading();
        sheet.Cell(row, PracticeColumns.Label).SetText(label);
        var values = sheet.Cell(row, PracticeColumns.Value).SetText(value);
        values.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        values.Style.Alignment.Indent = 1;
        WriteUnit(sheet, row, unit);
        sheet.Cell(row, PracticeColumns.Note).SetText(note);
    }

    private static void WriteUnit(IXLWorksheet sheet, int row, string unit) =>
        sheet.Cell(row, PracticeColumns.Unit).SetText(unit).Style.Alignment.Indent = 1;

    private static IXLRange Row(IXLWorksheet sheet, int row) => sheet.Range(row, PracticeColumns.Tag, row, PracticeColumns.Note);

    private static IXLCell CellAt(IXLWorksheet sheet, CellAddress address) => sheet.Cell(address.Row, address.Column);
}
