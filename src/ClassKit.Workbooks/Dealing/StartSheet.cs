using System.Globalization;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>Writes the first sheet: whose workbook it is, how it works, what is in it.</summary>
internal static class StartSheet
{
    private const int Number = 1;
    private const int Label = 2;
    private const int Value = 3;
    private const int Skill = 4;
    private const int Minutes = 5;
    private const int Points = 6;
    private const double NumberWidth = 6;
    private const double LabelWidth = 18;
    private const double ValueWidth = 38;
    private const double SkillWidth = 26;
    private const double MinutesWidth = 11;
    private const double PointsWidth = 11;
    private const double TextWidth = LabelWidth + ValueWidth + SkillWidth + MinutesWidth + PointsWidth;

    public static void Write(XLWorkbook workbook, DealtClass dealt, DealtStudent student, PracticeLayout layout)
    {
        var sheet = workbook.AddWorksheet(PracticeLayout.StartSheet);
        sheet.AsPage();
        SetColumns(sheet);
        WriteWhose(sheet, dealt, student);
        var row = WriteSteps(sheet, Instructions.For(dealt.Marking, layout.Exercises[0].Answers[0].Tag, dealt.Exercises, dealt.Plan.OneSheet), PracticeLayout.DealCode.Row + (dealt.Due is null ? 2 : 3));
        row = WriteLegend(sheet, row + 1);
        row = WriteContents(sheet, layout, dealt.IsSameForAll, row + 1);

        sheet.TabColor = Palette.Answer;
        sheet.SheetView.ZoomScale = 110;
        sheet.SetUpPage(sheet.Range(1, Number, row, Points), XLPageOrientation.Portrait, dealt.Paper, student.Who.Shown, dealt.Cohort, DealText.Footer(dealt));
        sheet.ProtectFromSlips();
    }

    private static void SetColumns(IXLWorksheet sheet)
    {
        sheet.Column(Number).Width = NumberWidth;
        sheet.Column(Label).Width = LabelWidth;
        sheet.Column(Value).Width = ValueWidth;
        sheet.Column(Skill).Width = SkillWidth;
        sheet.Column(Minutes).Width = MinutesWidth;
        sheet.Column(Points).Width = PointsWidth;
    }

    private static void WriteWhose(IXLWorksheet sheet, DealtClass dealt, DealtStudent student)
    {
        Row(sheet, 1).AsTitle();
        sheet.Cell(1, Number).SetText(" " + PracticeLayout.TitlePrefix + dealt.LessonTitle);
        var id = PracticeLayout.StudentId;
        WriteFact(sheet, id.Row - 1, "Name", student.Who.Shown);
        WriteFact(sheet, id.Row, PracticeLayout.StudentIdLabel, student.Who.Id);
        if (dealt.Cohort.Length > 0) WriteFact(sheet, id.Row + 1, PracticeLayout.ClassLabel, dealt.Cohort);
        if (dealt.Due is { } due) WriteFact(sheet, PracticeLayout.DealCode.Row + 1, PracticeLayout.DueLabel, due.Words);
        sheet.Workbook.NameCell(PracticeLayout.StudentIdName, id);
        if (dealt.Identity is null) return;
        WriteFact(sheet, PracticeLayout.DealCode.Row, PracticeLayout.DealCodeLabel, DealText.Cell(dealt));
        sheet.Workbook.NameCell(PracticeLayout.DealCodeName, PracticeLayout.DealCode);
    }

    private static void WriteFact(IXLWorksheet sheet, int row, string label, string value)
    {
        sheet.Cell(row, Label).SetText(label).AsQuiet();
        sheet.Cell(row, Value).SetText(value).Style.Font.Bold = true;
        sheet.Row(row).Height = 19;
    }

    private static int WriteSteps(IXLWorksheet sheet, IReadOnlyList<string> steps, int row)
    {
        Row(sheet, row).AsHeading();
        sheet.Cell(row, Label).SetText("How it works");
        for (var index = 0; index < steps.Count; index++)
        {
            row++;
            sheet.Cell(row, Number).SetText((index + 1).ToString(CultureInfo.InvariantCulture)).AsTag();
            var text = sheet.Range(row, Label, row, Points);
            text.Merge();
            text.FirstCell().SetText(steps[index]).Wrapped();
            sheet.Row(row).Height = TextHeight.Of(steps[index], TextWidth) + 3;
        }

        return row + 1;
    }

    private static int WriteLegend(IXLWorksheet sheet, int row)
    {
        Row(sheet, row).AsHeading();
        sheet.Cell(row, Label).SetText("What the cells look like");
        var given = sheet.Cell(++row, Label);
        given.SetText("a number").AsGiven();
        sheet.Cell(row, Value).SetText("Thin line, tinted: given to you. Use it, leave it.").Style.Alignment.Indent = 1;
        var answer = sheet.Cell(++row, Label);
        answer.SetText("your answer").AsAnswer();
        answer.Style.Protection.Locked = true;
        sheet.Cell(row, Value).SetText("Thick frame: your answer goes here, one formula or number.").Style.Alignment.Indent = 1;
        var scratch = sheet.Range(++row, Label, row, Label);
        scratch.AsScratch();
        scratch.Style.Protection.Locked = true;
        sheet.Cell(row, Value).SetText("Dashed line: scratch area. Anything goes.").Style.Alignment.Indent = 1;
        for (var at = row - 2; at <= row; at++)
            sheet.Row(at).Height = 20;
        return row + 1;
    }

    private static int WriteContents(IXLWorksheet sheet, PracticeLayout layout, bool isSameForAll, int row)
    {
        Row(sheet, row).AsHeading();
        sheet.Cell(row, Label).SetText(isSameForAll ? "Your exercises" : "Your exercises; others have others of equal weight");
        sheet.Cell(row, Skill).SetText("Skill");
        Right(sheet.Cell(row, Minutes).SetText("Minutes"));
        Right(sheet.Cell(row, Points).SetText("Points"));
        foreach (var exercise in layout.Exercises)
        {
            row++;
            sheet.Cell(row, Number).SetText(exercise.Number.ToString(CultureInfo.InvariantCulture)).AsTag();
            var title = sheet.Range(row, Label, row, Value);
            title.Merge();
            title.FirstCell().SetText(exercise.Exercise.Title).Hyperlink = new XLHyperlink(WayRow.TopOf(exercise), "Go to the exercise's sheet");
            title.FirstCell().Style.Font.FontColor = Palette.Answer;
            title.FirstCell().Style.Font.Underline = XLFontUnderlineValues.Single;
            sheet.Cell(row, Skill).SetText(exercise.Exercise.Skill);
            sheet.Cell(row, Minutes).SetValue(exercise.Exercise.Minutes);
            sheet.Cell(row, Points).SetNumber(exercise.Exercise.Parts.Sum(part => part.Points));
            var line = Row(sheet, row);
            line.Style.Border.BottomBorder = XLBorderStyleValues.Hair;
            line.Style.Border.BottomBorderColor = Palette.Line;
            sheet.Row(row).Height = 20;
        }

        var total = Row(sheet, ++row);
        total.Style.Font.Bold = true;
        total.Style.Border.TopBorder = XLBorderStyleValues.Thin;
        total.Style.Border.TopBorderColor = Palette.Line;
        sheet.Cell(row, Label).SetText("Together");
        sheet.Cell(row, Minutes).SetValue(layout.Exercises.Sum(exercise => exercise.Exercise.Minutes));
        sheet.Cell(row, Points).SetNumber(layout.Exercises.Sum(exercise => exercise.Exercise.Parts.Sum(part => part.Points)));
        sheet.Row(row).Height = 20;
        return row;
    }

    private static void Right(IXLCell cell) => cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;

    private static IXLRange Row(IXLWorksheet sheet, int row) => sheet.Range(row, Number, row, Points);
}
