using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Sensory;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Sensory;

/// <summary>
/// How likely every number of right answers is if all of them are guesses: the working behind <see cref="TriangleSheet"/>, step by step.
/// </summary>
/// <remarks>The binomial law with one in three, ISO 4120:2021; functions that every spreadsheet program has.</remarks>
internal static class GuessesSheet
{
    /// <summary>The row of no right answer.</summary>
    public const int First = 4;

    /// <summary>The row of as many right answers as there are seats.</summary>
    public static int LastRow(Tasting tasting) => First + Math.Max(1, tasting.Servings.Count);

    public static void Write(IXLWorksheet sheet, LessonPack pack, Tasting tasting)
    {
        var last = LastRow(tasting);
        sheet.AsPage();
        sheet.Range(1, 1, 1, 3).AsTitle();
        sheet.Cell(1, 1).SetText(" If everybody guesses");
        foreach (var (index, (head, width)) in new[] { ("Right answers", 16.0), ("Just so many", 16), ("So many or more", 18) }.Index())
        {
            sheet.Column(index + 1).Width = width;
            sheet.Cell(First - 1, index + 1).SetText(head);
        }
        sheet.Range(First - 1, 1, First - 1, 3).AsTableHead();
        for (var row = First; row <= last; row++)
        {
            sheet.Cell(row, 1).SetValue(row - First);
            sheet
                .Cell(row, 2)
                .SetFormulaA1(
                    FormattableString.Invariant(
                        $"IF({TriangleSheet.Answers}=0,\"\",IF(A{row}>{TriangleSheet.Answers},0,COMBIN({TriangleSheet.Answers},A{row})*(1/3)^A{row}*(2/3)^({TriangleSheet.Answers}-A{row})))"
                    )
                );
            sheet.Cell(row, 3).SetFormulaA1(FormattableString.Invariant($"IF({TriangleSheet.Answers}=0,\"\",B{row}+C{row + 1})"));
            sheet.Range(row, 2, row, 3).Style.NumberFormat.Format = "0.0000";
            sheet.Range(row, 1, row, 3).AsTableRow();
        }
        sheet.SetUpPage(sheet.Range(1, 1, last, 3), XLPageOrientation.Portrait, pack.Class.Paper, pack.Class.Name, pack.Lesson.Title);
        sheet.ProtectFromSlips();
    }
}
