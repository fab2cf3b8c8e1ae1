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
    private static readonly double[] Usual = [6, 17, 33, 22, 10, 10];

    /// <summary>What fits across a page in large print.</summary>
    private static readonly double[] Large = [4, 14, 14.5, 11.5, 8, 7.5];

    /// <summary>Of number, label, value, skill, minutes and points, in characters.</summary>
    private readonly double[] _widths;

    /// <summary>What a step of indentation takes of a cell, in characters.</summary>
    private const double Indent = 2;

    private readonly IXLWorksheet _sheet;
    private readonly StartPlan _plan;

    /// <summary>The first rows of what stands whole on a page, from the top down, and the row behind the last.</summary>
    private readonly List<int> _pieces = [];

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
        var start = new StartSheet(sheet, layout.Start, student.LargePrint ? Large : Usual);
        var end = start.Fill(dealt, student, layout);
        sheet.TabColor = Palette.Answer;
        sheet.SheetView.ZoomScale = PageLook.Zoom(student.LargePrint);
        sheet.SetUpPage(
            sheet.Range(layout.Start.FirstRow, layout.Start.LabelColumn - 1, end.Row, end.Column),
            XLPageOrientation.Portrait,
            dealt.Paper,
            student.Who.Shown,
            dealt.Cohort,
            DealText.Footer(dealt)
        );
        if (student.LargePrint)
            sheet.KeepWhole(start._pieces, sheet.PrintLarge(dealt.Paper, end.Column));
        else
            sheet.PrintOnOnePage(dealt.Paper, PageLook.Height(sheet, layout.Start.FirstRow, end.Row));
        sheet.ProtectFromSlips();
    }

    private (int Row, int Column) Fill(DealtClass dealt, DealtStudent student, PracticeLayout layout)
    {
        SetColumns();
        WriteWhose(dealt, student);
        var row = WriteSteps(
            Instructions.For(dealt.Marking, layout.Exercises[0].Answers[0].Tag, dealt.Exercises, dealt.Plan.OneSheet),
            student.LargePrint,
            (dealt.DueFor(student) is null ? _plan.DealCode : _plan.Due).Row + 2
        );
        _pieces.Add(row + 1);
        row = WriteLegend(row + 1);
        _pieces.Add(row + 1);
        var last = WriteContents(layout, student, dealt.HasOneSet, row + 1);
        _pieces.Add(last + 1);
        return (last, Points);
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

    private int WriteSteps(IReadOnlyList<string> steps, bool isLarge, int row)
    {
        _pieces.Add(_plan.FirstRow);
        Row(row).AsHeading();
        _sheet.Cell(row, Label).SetText("How it works");
        for (var index = 0; index < steps.Count; index++)
        {
            row++;
            // The heading goes with the first step.
            if (index > 0)
                _pieces.Add(row);
            _sheet.Cell(row, Number).SetText((index + 1).ToString(CultureInfo.InvariantCulture)).AsTag();
            var text = _sheet.Range(row, Label, row, Points);
            text.Merge();
            text.FirstCell().SetText(steps[index]).Wrapped();
            _sheet.Row(row).Height = TextHeight.Of(steps[index], _widths[1..].Sum() * (isLarge ? TextHeight.Averaged : 1)) + 3;
        }

        return row + 1;
    }

    private int WriteLegend(int row)
    {
        Row(row).AsHeading();
        _sheet.Cell(row, Label).SetText("What the cells look like");
        var given = _sheet.Cell(++row, Label);
        given.SetText("a number").AsGiven();
        Explain(row, "Thin line, tinted: given to you. Use it, leave it.");
        var answer = _sheet.Cell(++row, Label);
        answer.SetText("your answer").AsAnswer();
        answer.Style.Protection.Locked = true;
        Explain(row, "Thick frame: your answer goes here, one formula or number.");
        var scratch = _sheet.Range(++row, Label, row, Label);
        scratch.AsScratch();
        scratch.Style.Protection.Locked = true;
        Explain(row, "Dashed line: scratch area. Anything goes.");
        return row + 1;
    }

    private void Explain(int row, string words)
    {
        _sheet.Across(row, Value, Points, words).Style.Alignment.Indent = 1;
        _sheet.Row(row).Height = Math.Max(20, TextHeight.Of(words, _widths[2..].Sum() - Indent));
    }

    private int WriteContents(PracticeLayout layout, DealtStudent student, bool isSameForAll, int row)
    {
        Row(row).AsHeading();
        _sheet.Cell(row, Label).SetText(isSameForAll ? "Your exercises" : "Your exercises, by their numbers in the class’s list");
        if (!student.LargePrint)
            _sheet.Cell(row, Skill).SetText("Skill");
        Right(_sheet.Cell(row, Minutes).SetText("Minutes"));
        Right(_sheet.Cell(row, Points).SetText("Points"));
        foreach (var exercise in layout.Exercises)
        {
            row++;
            _sheet.Cell(row, Number).SetText(exercise.Number.ToString(CultureInfo.InvariantCulture)).AsTag();
            // In large print there is no room for the skill, which the sheet's tab names.
            var title = _sheet.Range(row, Label, row, student.LargePrint ? Skill : Value);
            title.Merge();
            title.FirstCell().SetText(exercise.Exercise.Title).Hyperlink = new XLHyperlink(
                WayRow.TopOf(exercise),
                "Go to the exercise's sheet"
            );
            title.FirstCell().Style.Font.FontColor = Palette.Answer;
            title.FirstCell().Style.Font.Underline = XLFontUnderlineValues.Single;
            title.FirstCell().Wrapped();
            if (!student.LargePrint)
                _sheet.Cell(row, Skill).SetText(exercise.Exercise.Skill).Wrapped();
            _sheet.Cell(row, Minutes).SetValue(student.MinutesFor(exercise.Exercise));
            _sheet.Cell(row, Points).SetNumber(exercise.Exercise.Parts.Sum(part => part.Points));
            var line = Row(row);
            line.Style.Border.BottomBorder = XLBorderStyleValues.Hair;
            line.Style.Border.BottomBorderColor = Palette.Line;
            _sheet.Row(row).Height = Math.Max(
                20,
                student.LargePrint
                    ? TextHeight.Of(exercise.Exercise.Title, _widths[1..4].Sum())
                    : Math.Max(
                        TextHeight.Of(exercise.Exercise.Title, _widths[1..3].Sum()),
                        TextHeight.Of(exercise.Exercise.Skill, _widths[3])
                    )
            );
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
