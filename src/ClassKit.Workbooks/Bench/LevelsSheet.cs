using ClassKit.Terms.Bench;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Bench;

/// <summary>The rubric behind the marks: what is seen at each level, and the list that levels are chosen from.</summary>
internal static class LevelsSheet
{
    public const int FirstLevel = 4;
    private const int HeadRow = 3;
    private const double MostWidth = 26;
    private const double LeastWidth = 16;
    private const double LevelWidth = 14;
    private const double PointsWidth = 8;

    public static void Write(XLWorkbook workbook, BenchForm form)
    {
        var sheet = workbook.AddWorksheet(BenchGrid.LevelsSheet);
        var last = 2 + form.Scale.Criteria.Count;
        sheet.AsPage();
        sheet.Range(1, 1, 1, last).AsTitle();
        sheet.Cell(1, 1).SetText(" What is seen at each level");
        sheet.Cell(HeadRow, 1).SetText("Level");
        sheet.Cell(HeadRow, 2).SetText("Points");
        sheet.Column(1).Width = LevelWidth;
        sheet.Column(2).Width = PointsWidth;
        // As wide as one page lets them be, where they can be read so.
        var width = Math.Clamp(
            Math.Floor((PageLook.ReadableWidth(last) - LevelWidth - PointsWidth) / Math.Max(1, form.Scale.Criteria.Count)),
            LeastWidth,
            MostWidth
        );
        foreach (var (at, criterion) in form.Scale.Criteria.Index())
        {
            sheet.Column(3 + at).Width = width;
            sheet.Cell(HeadRow, 3 + at).SetText(FormattableString.Invariant($"{criterion.Name} (× {criterion.Weight:0.##})")).Wrapped();
        }
        sheet.Range(HeadRow, 1, HeadRow, last).AsTableHead();
        sheet.Row(HeadRow).Height = form
            .Scale.Criteria.Select((_, at) => TextHeight.Of(sheet.Cell(HeadRow, 3 + at).GetString(), width - 2))
            .Append(33)
            .Max();
        foreach (var (place, name) in form.Scale.LevelNames.Index())
        {
            var row = FirstLevel + place;
            sheet.Cell(row, 1).SetText(name);
            sheet.Cell(row, 2).SetNumber(form.Scale.Levels[place]).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
            foreach (var (at, seen) in form.Descriptors.Index())
                sheet.Cell(row, 3 + at).SetText(seen[place]).Wrapped().Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
            sheet.Range(row, 1, row, last).AsTableRow();
            sheet.Row(row).Height = form.Descriptors.Max(seen => TextHeight.Of(seen[place], width - 1));
        }
        sheet.SetUpPage(
            sheet.Range(1, 1, FirstLevel + form.Scale.Levels.Count - 1, last),
            XLPageOrientation.Landscape,
            form.Paper,
            form.Cohort,
            form.Rubric
        );
        sheet.PageSetup.SetRowsToRepeatAtTop(HeadRow, HeadRow);
        sheet.SpreadOverPages(form.Paper, last, 2);
        sheet.ProtectFromSlips();
    }
}
