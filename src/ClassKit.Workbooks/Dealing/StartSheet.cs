using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>Writes the first sheet: whose workbook it is, how it works, what is in it.</summary>
internal sealed class StartSheet
{
    private static readonly double[] Usual = [6, 18, 38, 26, 11, 11];

    /// <summary>What fits across a page on its side in large print.</summary>
    private static readonly double[] Large = [5, 16, 27, 18, 9, 9];

    /// <summary>Of number, label, value, skill, minutes and points, in characters.</summary>
    private readonly double[] _widths;

    private readonly IXLWorksheet _sheet;
    private readonly StartPlan _plan;

    private StartSheet(IXLWorksheet sheet, StartPlan plan, double[] widths) => (_sheet, _plan, _widths) = (sheet, plan, widths);

    private int Number => _plan.LabelColumn - 1;

    private int Label => _plan.LabelColumn;

    private int Value => _plan.LabelColumn + 1;

    private int Skill => _plan.LabelColumn + 2;

    private int Minutes => _plan.LabelColumn + 3;

    private int Points => _plan.LabelColumn + 4;

    public static void Write(XLWorkbook workbook, DealtClass dealt, DealtStudent student, PracticeLayout layout)
    {
        var sheet = workbook.AddWorksheet(layout.Start.Sheet);
        sheet.AsPage();
        var end = new StartSheet(sheet, layout.Start, student.LargePrint ? Large : Usual).Fill(dealt, student, layout);
        sheet.TabColor = Palette.Answer;
        sheet.SheetView.ZoomScale = PageLook.Zoom(student.LargePrint);
        sheet.SetUpPage(
            sheet.Range(layout.Start.FirstRow, layout.Start.LabelColumn - 1, end.Row, end.Column),
            student.LargePrint ? XLPageOrientation.Landscape : XLPageOrientation.Portrait,
            dealt.Paper,
            student.Who.Shown,
            dealt.Cohort,
            DealText.Footer(dealt)
        );
        if (student.LargePrint)
            sheet.PrintLarge(dealt.Paper, end.Column);
        sheet.ProtectFromSlips();
    }

    private (int Row, int Column) Fill(DealtClass dealt, DealtStudent student, PracticeLayout layout)
    {
        SetColumns();
        WriteWhose(dealt, student);
        var row = WriteSteps(
            Instructions.For(dealt.Marking, layout.Exercises[0].Answers[0].Tag, dealt.Exercises, dealt.Plan.OneSheet),
            (dealt.DueFor(student) is null ? _plan.DealCode : _plan.Due).Row + 2
        );
        if (student.LargePrint)
            _sheet.PageSetup.AddHorizontalPageBreak(row);
        row = WriteLegend(row + 1);
        return (WriteContents(layout, student, dealt.HasOneSet, row + 1), Points);
    }

    private void SetColumns()
    {
        foreach (var (index, width) in _widths.Index())
            _sheet.Column(Number + index).Width = width;
    }

    private void WriteWhose(DealtClass dealt, DealtStudent student)
    {
        Row(_plan.FirstRow).AsTitle();
        _sheet.Cell(_plan.FirstRow, Number).SetText(" " + StartPlan.TitlePrefix + dealt.LessonTitle);
        WriteFact(_plan.Name, "Name", student.Who.Shown);
        WriteFact(_plan.StudentId, StartPlan.StudentIdLabel, student.Who.Id);
        if (dealt.Cohort.Length > 0)
            WriteFact(_plan.Class, StartPlan.ClassLabel, dealt.Cohort);
        if (dealt.DueFor(student) is { } due)
            WriteFact(_plan.Due, StartPlan.DueLabel, due.Words);
        _sheet.Workbook.NameCell(StartPlan.StudentIdName, _plan.StudentId);
        if (dealt.Identity is null)
            return;
        WriteFact(_plan.DealCode, StartPlan.DealCodeLabel, DealText.Cell(dealt));
        _sheet.Workbook.NameCell(StartPlan.DealCodeName, _plan.DealCode);
    }

    private void WriteFact(CellAddress place, string label, string value)
    {
        _sheet.Cell(place.Row, place.Column - 1).SetText(label).AsQuiet();
        _sheet.Cell(place.Row, place.Column).SetText(value).Style.Font.Bold = true;
        _sheet.Row(place.Row).Height = 19;
    }

    private int WriteSteps(IReadOnlyList<string> steps, int row)
    {
        Row(row).AsHeading();
        _sheet.Cell(row, Label).SetText("How it works");
        for (var index = 0; index < steps.Count; index++)
        {
            row++;
            _sheet.Cell(row, Number).SetText((index + 1).ToString(CultureInfo.InvariantCulture)).AsTag();
            var text = _sheet.Range(row, Label, row, Points);
            text.Merge();
            text.FirstCell().SetText(steps[index]).Wrapped();
            _sheet.Row(row).Height = TextHeight.Of(steps[index], _widths.Skip(1).Sum()) + 3;
        }

        return row + 1;
    }

    private int WriteLegend(int row)
    {
        Row(row).AsHeading();
        _sheet.Cell(row, Label).SetText("What the cells look like");
        var given = _sheet.Cell(++row, Label);
        given.SetText("a number").AsGiven();
        _sheet.Cell(row, Value).SetText("Thin line, tinted: given to you. Use it, leave it.").Style.Alignment.Indent = 1;
        var answer = _sheet.Cell(++row, Label);
        answer.SetText("your answer").AsAnswer();
        answer.Style.Protection.Locked = true;
        _sheet.Cell(row, Value).SetText("Thick frame: your answer goes here, one formula or number.").Style.Alignment.Indent = 1;
        var scratch = _sheet.Range(++row, Label, row, Label);
        scratch.AsScratch();
        scratch.Style.Protection.Locked = true;
        _sheet.Cell(row, Value).SetText("Dashed line: scratch area. Anything goes.").Style.Alignment.Indent = 1;
        for (var at = row - 2; at <= row; at++)
            _sheet.Row(at).Height = 20;
        return row + 1;
    }

    private int WriteContents(PracticeLayout layout, DealtStudent student, bool isSameForAll, int row)
    {
        Row(row).AsHeading();
        _sheet.Cell(row, Label).SetText(isSameForAll ? "Your exercises" : "Your exercises, by their numbers in the class’s list");
        _sheet.Cell(row, Skill).SetText("Skill");
        Right(_sheet.Cell(row, Minutes).SetText("Minutes"));
        Right(_sheet.Cell(row, Points).SetText("Points"));
        foreach (var exercise in layout.Exercises)
        {
            row++;
            _sheet.Cell(row, Number).SetText(exercise.Number.ToString(CultureInfo.InvariantCulture)).AsTag();
            var title = _sheet.Range(row, Label, row, Value);
            title.Merge();
            title.FirstCell().SetText(exercise.Exercise.Title).Hyperlink = new XLHyperlink(
                WayRow.TopOf(exercise),
                "Go to the exercise's sheet"
            );
            title.FirstCell().Style.Font.FontColor = Palette.Answer;
            title.FirstCell().Style.Font.Underline = XLFontUnderlineValues.Single;
            _sheet.Cell(row, Skill).SetText(exercise.Exercise.Skill);
            _sheet.Cell(row, Minutes).SetValue(student.MinutesFor(exercise.Exercise));
            _sheet.Cell(row, Points).SetNumber(exercise.Exercise.Parts.Sum(part => part.Points));
            var line = Row(row);
            line.Style.Border.BottomBorder = XLBorderStyleValues.Hair;
            line.Style.Border.BottomBorderColor = Palette.Line;
            _sheet.Row(row).Height = 20;
        }

        var total = Row(++row);
        total.Style.Font.Bold = true;
        total.Style.Border.TopBorder = XLBorderStyleValues.Thin;
        total.Style.Border.TopBorderColor = Palette.Line;
        _sheet.Cell(row, Label).SetText("Together");
        _sheet.Cell(row, Minutes).SetValue(layout.Exercises.Sum(exercise => student.MinutesFor(exercise.Exercise)));
        _sheet.Cell(row, Points).SetNumber(layout.Exercises.Sum(exercise => exercise.Exercise.Parts.Sum(part => part.Points)));
        _sheet.Row(row).Height = 20;
        return row;
    }

    private static void Right(IXLCell cell) => cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;

    private IXLRange Row(int row) => _sheet.Range(row, Number, row, Points);
}
