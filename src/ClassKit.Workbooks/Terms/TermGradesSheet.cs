using System.Globalization;
using ClassKit.Terms.Rules;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Terms;

/// <summary>The first sheet: what every category came to, the result, and the grade, in live formulas.</summary>
internal static class TermGradesSheet
{
    // This sheet alone is printed unless somebody asks for more: with a rule of usual length name and grade stand on one page.
    private const double CategoryWidth = 11;
    private const double ResultWidth = 10;

    public static void Write(XLWorkbook workbook, TermGrid grid)
    {
        var rule = grid.Term.Rule;
        var lastCategory = TermGrid.FirstColumn + rule.Categories.Count - 1;
        var (percent, rounded, average) = (lastCategory + 1, lastCategory + 2, lastCategory + 3);
        var grade = average + rule.Lines.Count + 1;
        var sheet = new TermSheet(
            workbook,
            TermGrid.GradesSheet,
            "Grades",
            $"By the rule “{rule.Title}”. Weights and marks, in their frames, can be changed: everything here follows, and is locked against slips, without a password. An empty category leaves its weight to the others.",
            grid,
            grade
        );
        sheet.Weights("Weight");
        foreach (var (index, block) in grid.Blocks.Index())
        {
            var column = TermGrid.FirstColumn + index;
            sheet.Head(column, block.Category.Name, CategoryWidth);
            var weight = sheet.At(TermGrid.WeightRow, column).SetNumber(block.Category.Weight);
            weight.AsEntry();
            weight.Style.NumberFormat.Format = FormatOf(block.Category.Weight);
            if (block.First <= block.Last)
                sheet.Formulas(column, "0.00 %", row => OnShares(block.Result, row));
        }
        sheet.Head(percent, "Result, %", ResultWidth);
        sheet.Formulas(percent, "0.00", row => TermFormulas.Percent(TermGrid.FirstColumn, lastCategory, row));
        sheet.Head(rounded, "Rounded, %", ResultWidth);
        sheet.Formulas(rounded, "General", row => TermFormulas.Rounded(TermGrid.Cell(percent, row), rule.Rounding));
        sheet.Head(average, "By the average", CategoryWidth);
        sheet.Formulas(average, "@", row => Named(rounded, row, rule, Place(rounded, row, rule)));
        foreach (var (index, line) in rule.Lines.Index())
        {
            var column = average + 1 + index;
            sheet.Head(column, $"Must be passed: {line.What}", 13);
            sheet.Formulas(column, "0.00 %", row => Reached(grid, line, row));
        }
        sheet.Head(grade, "Grade", 12);
        var held = Enumerable.Range(0, rule.Lines.Count).ToList();
        sheet.Formulas(grade, "@", row =>
            Named(
                rounded,
                row,
                rule,
                held.Count == 0
                    ? Place(rounded, row, rule)
                    : $"MIN({string.Join(',', held.Select(line => Held(rule, line, average + 1 + line, row)).Prepend(Place(rounded, row, rule)))})"
            )
        );
        for (var row = TermGrid.FirstRow; row <= grid.LastRow; row++)
            sheet.At(row, grade).Style.Font.Bold = true;
        sheet.Finish();
    }

    /// <summary>A share reads as percent; weights that are no shares stay what they are.</summary>
    private static string FormatOf(decimal weight) =>
        weight > 1 ? "General"
        : decimal.Round(weight, 2) == weight ? "0 %"
        : "0.00 %";

    private static string Reached(TermGrid grid, PassLine line, int row)
    {
        if (line.Criterion is null)
            return OnShares(grid.Blocks.First(block => block.Category.Name == line.Category).Result, row);
        var (first, last) = grid.CriterionColumns[line];
        if (last < first)
            return "\"\"";
        var shares = $"{TermGrid.SharesSheet}!{TermGrid.Along(first, last, row)}";
        return $"IF(COUNT({shares})=0,\"\",AVERAGE({shares}))";
    }

    private static string Place(int rounded, int row, GradeRule rule) =>
        $"MATCH({TermGrid.Cell(rounded, row)},{TermRuleSheet.Froms(rule.Scale)},1)";

    private static string Held(GradeRule rule, int line, int column, int row)
    {
        var reached = TermGrid.Cell(column, row);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"IF(ISNUMBER({reached}),IF(ROUND({InPercent.Of(reached)},{Rounding.Digits})<{TermRuleSheet.AtLeast(rule, line)},{TermRuleSheet.Ceiling(rule, line)},{rule.Scale.Steps.Count}),{rule.Scale.Steps.Count})"
        );
    }

    private static string Named(int rounded, int row, GradeRule rule, string place) =>
        $"IF({TermGrid.Cell(rounded, row)}=\"\",\"\",INDEX({TermRuleSheet.Names(rule.Scale)},{place}))";

    private static string OnShares(int column, int row)
    {
        var cell = $"{TermGrid.SharesSheet}!{TermGrid.Cell(column, row)}";
        return $"IF({cell}=\"\",\"\",{cell})";
    }
}
