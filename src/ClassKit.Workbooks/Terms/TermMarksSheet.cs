using ClassKit.Terms.Marks;
using ClassKit.Terms.Work;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Terms;

/// <summary>Every mark as it was given: what is typed here changes the grades.</summary>
internal static class TermMarksSheet
{
    public const string Absent = "absent";
    public const string Excused = "excused";
    public const string NotDue = "not due";
    public const string Late = "late";
    private const string Settled = "late, taken off";

    public static void Write(XLWorkbook workbook, TermGrid grid)
    {
        var sheet = new TermSheet(
            workbook,
            TermGrid.MarksSheet,
            "Marks",
            $"Points, or {Absent}, {Excused}, {NotDue}; an empty cell is no mark yet. Beside late work stands `{Late}`. What you type here changes the grades on the first sheet.",
            grid,
            grid.LastMarkColumn
        );
        sheet.Weights("Out of");
        foreach (var work in grid.Works)
        {
            foreach (var sat in work.Sittings)
            {
                sheet.Head(sat.Mark, work.Work.Title + (sat.Sitting == 1 ? "" : $", sitting {sat.Sitting}"));
                sheet.At(TermGrid.WeightRow, sat.Mark).SetNumber(work.Work.Weight).AsEntry();
                if (sat.Late is { } late)
                    sheet.Head(late, "late?", belongs: true);
                if (sat.OutOf is { } outOf)
                    sheet.Head(outOf, "out of, if other", belongs: true);
                for (var row = TermGrid.FirstRow; row <= grid.LastRow; row++)
                {
                    foreach (var column in new[] { sat.Mark, sat.Late, sat.OutOf }.OfType<int>())
                        sheet.At(row, column).AsEntry();
                }
            }
        }
        foreach (var (index, student) in grid.Term.Class.Students.Index())
        {
            foreach (var attempt in grid.Term.Attempts.Where(attempt => attempt.Student == student.Id))
            {
                var work = grid.Works.First(work => work.Work.Id == attempt.Assignment);
                Write(sheet, TermGrid.FirstRow + index, work.Sittings[attempt.Sitting - 1], attempt.Mark, work.Work);
            }
        }
        sheet.Finish();
    }

    private static void Write(TermSheet sheet, int row, TermGrid.SittingColumns columns, Mark mark, Assignment work)
    {
        var cell = sheet.At(row, columns.Mark);
        if (mark.State != MarkState.Marked)
        {
            cell.SetText(
                mark.State switch
                {
                    MarkState.Absent => Absent,
                    MarkState.Excused => Excused,
                    _ => NotDue,
                }
            ).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
            return;
        }
        cell.SetNumber(mark.Points);
        if (mark.Lateness != Lateness.InTime)
            sheet.At(row, columns.Late!.Value).SetText(mark.Lateness == Lateness.Late ? Late : Settled);
        if (mark.OutOf != work.OutOf)
            sheet.At(row, columns.OutOf!.Value).SetNumber(mark.OutOf);
    }
}
