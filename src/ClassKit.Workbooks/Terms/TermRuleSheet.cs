using System.Globalization;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Terms;

/// <summary>The numbers of the rule that formulas look up.</summary>
internal static class TermRuleSheet
{
    public const string Late = "Rule!$B$4";
    public const string Cap = "Rule!$B$5";
    public const string Step = "Rule!$B$6";
    private const int FirstScaleRow = 9;

    public static string Froms(GradeScale scale) => Column('A', FirstScaleRow, scale.Steps.Count);

    public static string Names(GradeScale scale) => Column('B', FirstScaleRow, scale.Steps.Count);

    /// <summary>The cell with what a line asks for.</summary>
    public static string AtLeast(GradeRule rule, int line) => Cell('B', LineRow(rule, line));

    /// <summary>The cell with the place in the scale of the highest grade where a line is missed.</summary>
    public static string Ceiling(GradeRule rule, int line) => Cell('C', LineRow(rule, line));

    public static void Write(XLWorkbook workbook, SchoolTerm term)
    {
        var rule = term.Rule;
        var sheet = workbook.AddWorksheet(TermGrid.RuleSheet);
        sheet.AsPage();
        sheet.Column(1).Width = 44;
        sheet.Column(2).Width = 18;
        sheet.Column(3).Width = 18;
        sheet.Column(4).Width = 46;
        sheet.Range(1, 1, 1, 4).AsTitle();
        sheet.Cell(1, 1).SetText($" {rule.Title}");
        sheet
            .Cell(2, 1)
            .SetText(
                "What the formulas look up. Weights stand on the first sheet; how many are dropped, ties and resits are in the formulas."
            )
            .AsQuiet();
        (string Name, decimal? Value)[] numbers =
        [
            ("Share taken off late work", rule.LateOff),
            ("Greatest share of a resit", rule.Resit.AtMost),
            ("Rounded to, in percent", rule.Rounding.Step),
        ];
        foreach (var (index, (name, value)) in numbers.Index())
        {
            sheet.Cell(4 + index, 1).SetText(name);
            if (value is { } number)
            {
                sheet.Cell(4 + index, 2).SetNumber(number).AsEntry();
                sheet.Cell(4 + index, 2).Style.NumberFormat.Format = index < 2 ? "0 %" : "General";
            }
            else
                sheet.Cell(4 + index, 2).SetText("not rounded");
        }
        Heads(sheet, FirstScaleRow - 1, "From, in percent", "Grade");
        foreach (var (index, step) in rule.Scale.Steps.Index())
        {
            sheet.Cell(FirstScaleRow + index, 1).SetNumber(step.From).AsEntry();
            sheet.Cell(FirstScaleRow + index, 1).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Left;
            sheet.Cell(FirstScaleRow + index, 2).SetText(step.Grade).AsEntry();
        }
        if (rule.Lines.Count > 0)
            Heads(sheet, LineRow(rule, 0) - 1, "Must be passed", "At least, in percent", "Otherwise at most");
        foreach (var (index, line) in rule.Lines.Index())
        {
            sheet.Cell(LineRow(rule, index), 1).SetText(line.What);
            sheet.Cell(LineRow(rule, index), 2).SetNumber(line.AtLeast).AsEntry();
            sheet.Cell(LineRow(rule, index), 3).SetNumber(line.OtherwiseAtMost + 1).AsEntry();
            sheet
                .Cell(LineRow(rule, index), 4)
                .SetText($"the place in the scale above: {rule.Scale.Steps[line.OtherwiseAtMost].Grade}")
                .AsQuiet()
                .Style.Alignment.Indent = 1;
        }
        sheet.SetUpPage(
            sheet.Range(1, 1, LineRow(rule, rule.Lines.Count), 4),
            XLPageOrientation.Landscape,
            term.Class.Paper,
            term.Class.Cohort,
            term.Title
        );
        sheet.ProtectFromSlips();
    }

    private static void Heads(IXLWorksheet sheet, int row, params string[] heads)
    {
        foreach (var (index, head) in heads.Index())
        {
            sheet.Cell(row, index + 1).SetText(head);
            if (heads.Length > 2 && index > 0)
                sheet.Cell(row, index + 1).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        }
        sheet.Range(row, 1, row, 4).AsTableHead();
    }

    private static int LineRow(GradeRule rule, int line) => FirstScaleRow + rule.Scale.Steps.Count + 2 + line;

    private static string Column(char column, int row, int count) =>
        string.Create(CultureInfo.InvariantCulture, $"Rule!${column}${row}:${column}${row + count - 1}");

    private static string Cell(char column, int row) => string.Create(CultureInfo.InvariantCulture, $"Rule!${column}${row}");
}
