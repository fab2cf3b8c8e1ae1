using ClassKit.Terms.Grades;
using ClassKit.Terms.Rules;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Terms;

/// <summary>What every work comes to, and every category: in formulas over the marks. What does not count is empty.</summary>
internal static class TermSharesSheet
{
    private const string Percent = "0.00 %";

    public static void Write(XLWorkbook workbook, TermGrid grid, IReadOnlyList<TermGrade> grades)
    {
        var sheet = new TermSheet(
            workbook,
            TermGrid.SharesSheet,
            "Shares",
            "What every work comes to, computed from the marks; the lowest are dropped in the category's result. Nothing is typed here but what criteria earned.",
            grid,
            grid.LastShareColumn
        );
        sheet.Weights("Counts");
        foreach (var work in grid.Works)
        {
            var block = grid.Blocks.First(block => block.Category.Name == work.Work.Category);
            sheet.Head(work.Share, work.Work.Title);
            sheet.At(TermGrid.WeightRow, work.Share).SetNumber(block.Category.Counting == CategoryCounting.ByPoints ? work.Work.Weight : 1);
            sheet.Formulas(work.Share, Percent, row => TermFormulas.Work(work, row, grid.Term.Rule));
            foreach (var sat in work.Sittings.Where(sat => sat.Share > 0))
            {
                sheet.Head(sat.Share, $"{work.Work.Title}, sitting {sat.Sitting}");
                sheet.Formulas(sat.Share, Percent, row =>
                    $"IF(ISNUMBER({TermFormulas.Mark(sat, row)}),{TermFormulas.Sitting(work, sat, row)},\"\")"
                );
            }
        }
        foreach (var block in grid.Blocks)
        {
            sheet.Head(block.Result, block.Category.Name, 14);
            if (block.First <= block.Last)
                sheet.Formulas(block.Result, Percent, row => TermFormulas.Category(block, row));
        }
        foreach (var (line, (first, _)) in grid.CriterionColumns)
            WriteCriterion(sheet, grid, grades, line, first);
        sheet.Finish();
    }

    private static void WriteCriterion(TermSheet sheet, TermGrid grid, IReadOnlyList<TermGrade> grades, PassLine line, int first)
    {
        foreach (var (at, work) in grid.Works.Where(work => work.Work.Category == line.Category).Index())
        {
            sheet.Head(first + at, $"{line.Criterion}: {work.Work.Title}");
            foreach (var (index, grade) in grades.Index())
            {
                var reached = CriterionShares.Reached(
                    grade.Works.First(one => one.Assignment == work.Work),
                    line.Criterion!,
                    grid.Term.Rule.Resit.Choice
                );
                var cell = sheet.At(TermGrid.FirstRow + index, first + at);
                cell.AsEntry();
                cell.Style.NumberFormat.Format = Percent;
                if (reached is { } share)
                    cell.SetShare(share);
            }
        }
    }
}
