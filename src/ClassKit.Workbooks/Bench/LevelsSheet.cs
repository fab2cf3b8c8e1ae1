using ClassKit.Terms.Bench;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Bench;

/// <summary>The rubric behind the marks: what is seen at each level, and the list that levels are chosen from.</summary>
internal static class LevelsSheet
{
    public const int FirstLevel = 4;
    private const int HeadRow = 3;
    private const double Width = 26;

    public static void Write(XLWorkbook workbook, BenchForm form)
    {
        var sheet = workbook.AddWorksheet(BenchGrid.LevelsSheet);
        var last = 2 + form.Scale.Criteria.Count;
        sheet.AsPage();
        sheet.Range(1, 1, 1, last).AsTitle();
        sheet.Cell(1, 1).SetText(" What is seen at each level");
        sheet.Cell(HeadRow, 1).SetText("Level");
        sheet.Cell(HeadRow, 2).SetText("Points");
        sheet.Column(1).Width = 16;
        sheet.Column(2).Width = 8;
        foreach (var (at, criterion) in form.Scale.Criteria.Index())
        {
            sheet.Column(3 + at).Width = Width;
            sheet.Cell(HeadRow, 3 + at).SetText(FormattableString.Invariant($"{criterion.Name} (× {criterion.Weight:0.##})")).Wrapped();
        }
        sheet.Range(HeadRow, 1, HeadRow, last).AsTableHead();
        sheet.Row(HeadRow).Height = 33;
        foreach (var (place, name) in form.Scale.LevelNames.Index())
        {
            var row = FirstLevel + place;
            sheet.Cell(row, 1).SetText(name);
            sheet.Cell(row, 2).SetNumber(form.Scale.Levels[place]).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
            foreach (var (at, seen) in form.Descriptors.Index())
                sheet.Cell(row, 3 + at).SetText(seen[place]).Wrapped().Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
            sheet.Range(row, 1, row, last).AsTableRow();
            sheet.Row(row).Height = form.Descriptors.Max(seen => TextHeight.Of(seen[place], Width - 1));
        }
        sheet.SetUpPage(
            sheet.Range(1, 1, FirstLevel + form.Scale.Levels.Count - 1, last),
            XLPageOrientation.Landscape,
            null,
            form.Cohort,
            form.Rubric
        );
    }
}
