using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Texts;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>Writes the sheet of an exercise, or of several that share one.</summary>
internal static class ExerciseSheet
{
    private const double AnswerRowHeight = 33;

    /// <summary>Title, subtitle, ways, two empty rows and the heading of the givens, in points.</summary>
    private const double HeadHeight = 32 + 22 + 24 + EmptyRowHeight + HeadingHeight;

    private const double EmptyRowHeight = 15;

    private const double HeadingHeight = 20;

    /// <summary>
    /// The most that stays in view above the questions, in points: half of what a laptop shows of a sheet at our zoom. More would leave no
    /// room to answer.
    /// </summary>
    private const double MostFrozen = 260;

    public static void Write(
        XLWorkbook workbook,
        DealtClass dealt,
        DealtStudent student,
        PracticeLayout all,
        IReadOnlyList<ExerciseLayout> layouts
    )
    {
        var (first, columns) = (layouts[0], layouts[0].Columns);
        var sheet = workbook.AddWorksheet(first.Sheet);
        sheet.AsPage();
        var widths = SheetWidths.For(student.LargePrint);
        SetColumns(sheet, columns, widths);
        foreach (var layout in layouts)
        {
            WriteTop(sheet, dealt, student, layout);
            WayRow.Write(sheet, all, layout, student.LargePrint);
            WriteGivens(sheet, student, layout);
            WriteAnswers(sheet, student, layout);
            WriteOptions(sheet, student, layout);
            WriteScratch(sheet, layout);
        }

        sheet.TabColor = first.Number % 2 == 0 ? Palette.Crust : Palette.Band;
        sheet.SheetView.ZoomScale = PageLook.Zoom(student.LargePrint);
        if (first.Answers.Count > 0)
            CellAt(sheet, first.Answers[0].Address).SetActive();
        if (layouts.Count == 1 && !student.LargePrint && HeightDownToGivens(all, first) <= MostFrozen)
            sheet.SheetView.FreezeRows(first.LastGivenRow);
        // In large print an empty grid would take a side of each exercise: who works on paper has more room beside it.
        var last = student.LargePrint ? layouts[^1].Answers[^1].Address.Row : layouts[^1].ScratchTo.Row;
        var area = sheet.Range(first.TitleRow, columns.Tag, last, columns.Last);
        sheet.SetUpPage(area, XLPageOrientation.Portrait, dealt.Paper, student.Who.Shown, dealt.LessonTitle, DealText.Footer(dealt));
        if (student.LargePrint)
            PrintLarge(sheet, dealt, layouts);
        else if (layouts.Count == 1)
            sheet.PrintOnOnePage(dealt.Paper, HeightFor(StandIn.For(all), all, first));
        sheet.ProtectFromSlips();
    }

    /// <summary>
    /// Large type fills a page soon: an exercise begins a page, and what is given and each question stand whole on one, as many together as
    /// it holds.
    /// </summary>
    private static void PrintLarge(IXLWorksheet sheet, DealtClass dealt, IReadOnlyList<ExerciseLayout> layouts)
    {
        var page = sheet.PrintLarge(dealt.Paper, layouts[0].Columns.Last);
        foreach (var row in layouts.SelectMany(layout => new[] { layout.GivensHeadingRow - 1, layout.AnswersHeadingRow - 1 }))
            sheet.Row(row).Height = EmptyRowHeight / 2;
        foreach (var (index, layout) in layouts.Index())
        {
            if (index > 0)
                sheet.PageSetup.AddHorizontalPageBreak(layout.TitleRow - 1);
            // The heading of the questions goes with the first row below it.
            sheet.KeepWhole(
                [
                    layout.TitleRow,
                    layout.GivensHeadingRow,
                    layout.AnswersHeadingRow,
                    .. Enumerable.Range(layout.AnswersHeadingRow + 2, layout.ScratchHeadingRow - layout.AnswersHeadingRow - 2),
                ],
                page
            );
        }
    }

    private static void SetColumns(IXLWorksheet sheet, PracticeColumns columns, SheetWidths widths)
    {
        sheet.Column(columns.Tag).Width = widths.Tag;
        sheet.Column(columns.Label).Width = widths.Label;
        sheet.Columns(columns.Value, columns.Last).Width = widths.Even;
    }

    /// <summary>What stands above the questions, the same for all who have the exercise, in points.</summary>
    private static double HeightDownToGivens(PracticeLayout all, ExerciseLayout layout) =>
        HeadHeight
        + ProblemHeight(ProblemOf(layout, StandIn.For(all)), SheetWidths.For(largePrint: false))
        + layout.Givens.Sum(place => GivenHeight(place.Given, SheetWidths.For(largePrint: false)));

    /// <summary>All that is printed of an exercise, as a student has it, in points.</summary>
    private static double HeightFor(DealtStudent student, PracticeLayout all, ExerciseLayout layout)
    {
        var widths = SheetWidths.For(largePrint: false);
        return HeightDownToGivens(all, layout)
            + layout.Answers.Sum(place => AnswerHeight(AskOf(layout, place, student), AnswerNote.Of(place.Part), widths))
            + layout.Options.Sum(place =>
                OptionRows.Texts(layout, place, student.GivensOf(layout.Exercise.Id)).Sum(text => OptionRows.Height(text, widths.Option))
            )
            + 2 * (EmptyRowHeight + HeadingHeight)
            + (layout.ScratchTo.Row - layout.ScratchHeadingRow) * EmptyRowHeight;
    }

    private static double GivenHeight(Given given, SheetWidths widths) => Math.Max(20, TextHeight.Of(given.Label, widths.Label));

    private static void WriteTop(IXLWorksheet sheet, DealtClass dealt, DealtStudent student, ExerciseLayout layout)
    {
        var exercise = layout.Exercise;
        Row(sheet, layout, layout.TitleRow).AsTitle();
        sheet
            .Cell(layout.TitleRow, layout.Columns.Tag)
            .SetText(string.Create(CultureInfo.InvariantCulture, $" {layout.Number}  {exercise.Title}"));

        var points = AnswerNote.Points(exercise.Parts.Sum(part => part.Points));
        var subtitle = string.Create(
            CultureInfo.InvariantCulture,
            $"{student.Who.Shown} · {points} · about {student.MinutesFor(exercise)} minutes{DealText.Behind(dealt)}"
        );
        if (student.LargePrint)
            sheet.Across(layout.SubtitleRow, layout.Columns.Tag, layout.Columns.Last, subtitle).AsQuiet();
        else
            sheet.Cell(layout.SubtitleRow, layout.Columns.Tag).SetText(subtitle).AsQuiet();
        sheet.Row(layout.SubtitleRow).Height = student.LargePrint
            ? Math.Max(22, TextHeight.Of(subtitle, SheetWidths.For(largePrint: true).All))
            : 22;

        var text = ProblemOf(layout, student);
        var problem = Row(sheet, layout, layout.ProblemRow);
        problem.Merge();
        problem.FirstCell().SetText(text).Wrapped();
        problem.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        sheet.Row(layout.ProblemRow).Height = ProblemHeight(text, SheetWidths.For(student.LargePrint));
    }

    /// <summary>The problem as the student reads it.</summary>
    public static string ProblemOf(ExerciseLayout layout, DealtStudent student) =>
        PlainText.From(ProblemText.Fill(layout.Exercise, student.GivensOf(layout.Exercise.Id)));

    /// <summary>The height of the problem's row, in points.</summary>
    public static double ProblemHeight(string text, SheetWidths widths) => TextHeight.Of(text, widths.All);

    private static void WriteGivens(IXLWorksheet sheet, DealtStudent student, ExerciseLayout layout)
    {
        var heading = layout.GivensHeadingRow;
        WriteHeading(sheet, layout, heading, "Given", "Value", "Unit", "");
        if (layout.Givens.Count == 0)
            return;

        var values = student.GivensOf(layout.Exercise.Id);
        foreach (var place in layout.Givens)
        {
            var row = place.Address.Row;
            sheet.Cell(row, layout.Columns.Tag).SetText(place.Tag).AsTag();
            sheet.Cell(row, layout.Columns.Label).SetText(place.Given.Label).Wrapped();
            var cell = CellAt(sheet, place.Address);
            cell.SetValue(values[place.Given.Id]);
            cell.AsGiven();
            cell.Style.NumberFormat.Format = NumberFormats.Of(place.Given);
            if (!place.Given.Unit.IsPercent)
                WriteUnit(sheet, layout, row, place.Given.Unit.Sign);
            sheet.Row(row).Height = GivenHeight(place.Given, SheetWidths.For(student.LargePrint));
            sheet.Workbook.NameCell(place.DefinedName, place.Address);
        }
    }

    private static void WriteAnswers(IXLWorksheet sheet, DealtStudent student, ExerciseLayout layout)
    {
        WriteHeading(
            sheet,
            layout,
            layout.AnswersHeadingRow,
            "Question",
            student.LargePrint ? "Answer" : "Your answer",
            "Unit",
            "What counts"
        );
        foreach (var place in layout.Answers)
        {
            if (place.Part.InWords is not null)
            {
                WordsRow.Write(sheet, layout, place, SheetWidths.For(student.LargePrint).Label);
                continue;
            }
            var row = place.Address.Row;
            var note = AnswerNote.Of(place.Part);
            var ask = AskOf(layout, place, student);
            sheet.Cell(row, layout.Columns.Tag).SetText(place.Tag).AsTag();
            sheet.Cell(row, layout.Columns.Label).SetText(ask).Wrapped();
            var cell = CellAt(sheet, place.Address);
            cell.AsAnswer();
            AnswerPrompt.Put(cell, place);
            if (NumberFormats.Of(place.Part) is { } format)
                cell.Style.NumberFormat.Format = format;
            WriteUnit(sheet, layout, row, AnswerNote.UnitBeside(place.Part));
            sheet.Range(row, layout.Columns.Note, row, layout.Columns.Last).Merge();
            sheet.Cell(row, layout.Columns.Note).SetText(note).Wrapped().AsQuiet();
            sheet.Row(row).Height = AnswerHeight(ask, note, SheetWidths.For(student.LargePrint));
            sheet.Workbook.NameCell(place.DefinedName, place.Address);
        }
    }

    /// <summary>What a part asks, and what a student sees drawn elsewhere.</summary>
    /// <remarks>
    /// The writer of workbooks has no pictures to give (ClosedXML 0.95 measures them with GDI+, which only Windows has), so that a drawing
    /// is told here.
    /// </remarks>
    public static string AskOf(ExerciseLayout layout, AnswerPlace place, DealtStudent student) =>
        place.Part.Choice?.Drawing is null
            ? place.Part.Ask
            : $"{place.Part.Ask}\nWhat you see: {(student.Who.Id == StandIn.Id ? StandIn.Seen : SeenText.Of(place.Part, student.AnswersOf(layout.Exercise.Id)[place.Part.Id]))}";

    /// <summary>The height of an answer's row, in points.</summary>
    public static double AnswerHeight(string ask, string note, SheetWidths widths) =>
        Math.Max(AnswerRowHeight, Math.Max(TextHeight.Of(ask, widths.Label), TextHeight.Of(note, widths.Note)));

    private static void WriteOptions(IXLWorksheet sheet, DealtStudent student, ExerciseLayout layout)
    {
        foreach (var place in layout.Options)
            OptionRows.Write(sheet, layout, place, student.GivensOf(layout.Exercise.Id), SheetWidths.For(student.LargePrint).Option);
    }

    private static void WriteScratch(IXLWorksheet sheet, ExerciseLayout layout)
    {
        WriteHeading(sheet, layout, layout.ScratchHeadingRow, "Scratch area: yours to use as you like, not graded", "", "", "");
        sheet.Range(layout.ScratchFrom.Row, layout.ScratchFrom.Column, layout.ScratchTo.Row, layout.ScratchTo.Column).AsScratch();
    }

    private static void WriteHeading(
        IXLWorksheet sheet,
        ExerciseLayout layout,
        int row,
        string label,
        string value,
        string unit,
        string note
    )
    {
        Row(sheet, layout, row).AsHeading();
        sheet.Cell(row, layout.Columns.Label).SetText(label);
        var values = sheet.Cell(row, layout.Columns.Value).SetText(value);
        values.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        values.Style.Alignment.Indent = 1;
        WriteUnit(sheet, layout, row, unit);
        sheet.Cell(row, layout.Columns.Note).SetText(note);
    }

    private static void WriteUnit(IXLWorksheet sheet, ExerciseLayout layout, int row, string unit) =>
        sheet.Cell(row, layout.Columns.Unit).SetText(unit).Style.Alignment.Indent = 1;

    private static IXLRange Row(IXLWorksheet sheet, ExerciseLayout layout, int row) =>
        sheet.Range(row, layout.Columns.Tag, row, layout.Columns.Last);

    private static IXLCell CellAt(IXLWorksheet sheet, CellAddress address) => sheet.Cell(address.Row, address.Column);
}
