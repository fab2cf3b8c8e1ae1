using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Outcomes;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>How the class did on every part: live counts of the outcomes, shares, and what to teach again.</summary>
internal static class PartsSheet
{
    private const int Tag = 1;
    private const int Ask = 2;
    private const int Skill = 3;
    private const int FirstOutcome = 4;
    private const int FirstRow = 6;
    private const double AskWidth = 40;
    private const double MisconceptionsWidth = 32;
    private static readonly IReadOnlyList<Outcome> Outcomes = OutcomeText.Order;
    private static readonly int Judged = FirstOutcome + Outcomes.Count;
    private static readonly int Right = Judged + 1;
    private static readonly int Understood = Judged + 2;
    private static readonly int Again = Judged + 3;
    private static readonly int Misconceptions = Judged + 4;

    public static void Write(XLWorkbook workbook, ClassGrades grades, ClassSummary summary, GradebookGrid grid)
    {
        var sheet = workbook.AddWorksheet("Parts");
        sheet.AsPage();
        WriteHead(sheet, grades);
        for (var index = 0; index < summary.Parts.Count; index++)
            WritePart(sheet, summary.Parts[index], grid, index);

        var last = FirstRow + Math.Max(summary.Parts.Count, 1) - 1;
        sheet.TabColor = Palette.Crust;
        sheet.SheetView.Freeze(FirstRow - 1, Ask);
        sheet.SetUpPage(
            sheet.Range(1, 1, last, Misconceptions),
            XLPageOrientation.Landscape,
            grades.Dealt.Paper,
            grades.Dealt.Cohort,
            grades.Dealt.LessonTitle
        );
        sheet.PageSetup.SetRowsToRepeatAtTop(FirstRow - 1, FirstRow - 1);
        var lastOfFirst = sheet.SpreadOverPages(grades.Dealt.Paper, Misconceptions, Ask);
        sheet
            .Across(
                2,
                Skill,
                lastOfFirst,
                "Number right: by formula or typed. Method shown: a right method, also on an earlier number of the student's own. Answers for the instructor count in neither."
            )
            .AsQuiet();
    }

    private static void WriteHead(IXLWorksheet sheet, ClassGrades grades)
    {
        sheet.Range(1, 1, 1, Misconceptions).AsTitle();
        // Tag and question stand on every page, so that only a short word may stand in them.
        sheet.Cell(1, 1).SetText(" Parts");
        sheet.Cell(1, Skill).SetText(grades.Dealt.LessonTitle);
        sheet.Cell(3, 1).SetText("Teach again where fewer show the method than").AsQuiet();
        var line = sheet.Cell(3, Skill);
        line.SetNumber(grades.Dealt.Marking.TeachAgainBelow).AsGiven();
        line.Style.NumberFormat.Format = "0 %";

        var row = FirstRow - 1;
        sheet.Range(row, 1, row, Misconceptions).AsTableHead();
        sheet.Row(row).Height = 48;
        Head(sheet.Cell(row, Tag), "", 6);
        Head(sheet.Cell(row, Ask), "Question", AskWidth);
        Head(sheet.Cell(row, Skill), "Skill", 20);
        for (var index = 0; index < Outcomes.Count; index++)
            Head(
                sheet.Cell(row, FirstOutcome + index),
                $"{OutcomeSigns.Character(Outcomes[index])} {OutcomeText.Brief(Outcomes[index])}",
                WidthOf(Outcomes[index]),
                isNumber: true
            );
        Head(sheet.Cell(row, Judged), "judged", 8, isNumber: true);
        Head(sheet.Cell(row, Right), "number right", 9, isNumber: true);
        Head(sheet.Cell(row, Understood), "method shown", 9, isNumber: true);
        Head(sheet.Cell(row, Again), "Teach again?", 13);
        sheet.Cell(row, Again).Style.Alignment.Indent = 1;
        Head(sheet.Cell(row, Misconceptions), "Known wrong turns met", MisconceptionsWidth);
    }

    private static void Head(IXLCell cell, string text, double width, bool isNumber = false)
    {
        cell.WorksheetColumn().Width = width;
        cell.SetText(text).Wrapped().Style.Alignment.Horizontal = isNumber
            ? XLAlignmentHorizontalValues.Right
            : XLAlignmentHorizontalValues.Left;
    }

    /// <summary>As wide as the longest word.</summary>
    private static double WidthOf(Outcome outcome) => OutcomeText.Brief(outcome).Split(' ').Max(word => word.Length) + 2;

    private static void WritePart(IXLWorksheet sheet, PartSummary part, GradebookGrid grid, int index)
    {
        var row = FirstRow + index;
        sheet.Cell(row, Tag).SetText(grid.Answers[index].Tag).AsTag();
        sheet.Cell(row, Ask).SetText(part.Part.Ask).Wrapped();
        sheet.Cell(row, Skill).SetText(part.Exercise.Skill).Wrapped();
        var students = $"{GradebookGrid.OutcomesSheet}!{grid.StudentsOf(GradebookGrid.FirstPartColumn + index)}";
        for (var outcome = 0; outcome < Outcomes.Count; outcome++)
            sheet.Cell(row, FirstOutcome + outcome).SetFormulaA1($"COUNTIF({students},\"{OutcomeText.Brief(Outcomes[outcome])}\")");

        var judged = Cell(Judged, row);
        // Nobody judges words but the instructor.
        if (part.Part.InWords is not null)
            sheet.Cell(row, Judged).SetNumber(0);
        else
            sheet.Cell(row, Judged).SetFormulaA1($"SUM({Cell(FirstOutcome, row)}:{Cell(Judged - 1, row)})-{Count(Outcome.Unsupported)}");
        sheet.Cell(row, Right).SetFormulaA1($"IF({judged}=0,\"\",({Count(Outcome.Sound)}+{Count(Outcome.ValueOnly)})/{judged})");
        var typedCounts = part.Part.FormulaAsked ? "" : "+" + Count(Outcome.ValueOnly);
        sheet
            .Cell(row, Understood)
            .SetFormulaA1($"IF({judged}=0,\"\",({Count(Outcome.Sound)}+{Count(Outcome.FollowThrough)}{typedCounts})/{judged})");
        sheet
            .Cell(row, Again)
            .SetFormulaA1($"IF({judged}=0,\"\",IF({Cell(Understood, row)}<${CellAddress.ColumnLetters(Skill)}$3,\"teach again\",\"\"))")
            .Style.Font.Bold = true;
        sheet.Cell(row, Again).Style.Alignment.Indent = 1;
        sheet.Range(row, Right, row, Understood).Style.NumberFormat.Format = "0 %";

        var met = string.Join(
            "; ",
            part.Misconceptions.Select(one =>
                string.Create(CultureInfo.InvariantCulture, $"{WrongTurnName.Of(one.Misconception)} ({one.Students})")
            )
        );
        sheet.Cell(row, Misconceptions).SetText(met).Wrapped();
        sheet.Range(row, 1, row, Misconceptions).AsTableRow();
        sheet.Row(row).Height = Math.Max(20, Math.Max(TextHeight.Of(part.Part.Ask, AskWidth), TextHeight.Of(met, MisconceptionsWidth)));

        string Count(Outcome outcome) => Cell(FirstOutcome + Outcomes.Index().First(place => place.Item == outcome).Index, row);
    }

    private static string Cell(int column, int row) => CellAddress.ColumnLetters(column) + row.ToString(CultureInfo.InvariantCulture);
}
