using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Sensory;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Sensory;

/// <summary>Who pointed out which sample, how many were right, and what that shows.</summary>
internal static class TriangleSheet
{
    /// <summary>Where <see cref="GuessesSheet"/> finds the number of answers, and of right ones.</summary>
    public const string Answers = "Triangle!$C$4";

    /// <inheritdoc cref="Answers"/>
    public const string Right = "Triangle!$C$5";

    private const int Head = 11;
    private const int Last = 8;

    public static void Write(IXLWorksheet sheet, LessonPack pack, Tasting tasting)
    {
        var servings = tasting.Servings;
        var (first, last) = (Head + 1, Head + Math.Max(1, servings.Count));
        // As many right answers as a row of it says, or more: fewer the further down, so that counting the likely ones finds the first
        // unlikely one.
        var chances = FormattableString.Invariant($"Guesses!C{GuessesSheet.First}:C{GuessesSheet.LastRow(tasting)}");
        sheet.AsPage();
        sheet.Range(1, 1, 1, Last).AsTitle();
        sheet.Cell(1, 1).SetText($" Triangle test: {pack.Lesson.Title}");
        sheet
            .Cell(2, 1)
            .SetText("Type the number that each seat pointed out into the framed cells; leave a seat empty that did not taste.")
            .AsQuiet();
        foreach (var (index, width) in new[] { 8.0, 12, 9, 9, 9, 11, 13, 9 }.Index())
            sheet.Column(index + 1).Width = width;

        Result(4, "Answers", FormattableString.Invariant($"COUNT(H{first}:H{last})"), "0");
        Result(5, "Right", FormattableString.Invariant($"SUM(H{first}:H{last})"), "0");
        Result(6, "Right by guessing", "C4/3", "0.0");
        Result(
            7,
            "Fewest, 5 % of risk",
            $"IF(C4=0,\"\",IF(COUNTIF({chances},\">0.05\")>C4,\"none would do\",COUNTIF({chances},\">0.05\")))",
            "0"
        );
        Result(8, "Chance by guessing", $"IF(C4=0,\"\",INDEX({chances},C5+1))", "0.0%");
        sheet.Cell(9, 1).SetText("What it shows").Style.Font.Bold = true;
        sheet.Range(9, 3, 9, Last).Merge();
        sheet
            .Cell(9, 3)
            .SetFormulaA1(
                FormattableString.Invariant(
                    $"IF(C4<{TriangleTest.FewestAnswers},\"Too few answers: {TriangleTest.FewestAnswers} at least.\",IF(C8<=0.05,\"A difference is shown, with a risk of 5 % at most that it was luck.\",\"No difference is shown. That does not show that they are alike.\"))"
                )
            );

        foreach (var (index, head) in new[] { "Seat", "Samples", "Left", "Middle", "Right", "Odd one", "Pointed out", "Right?" }.Index())
            sheet.Cell(Head, index + 1).SetText(head);
        sheet.Range(Head, 1, Head, Last).AsTableHead();
        foreach (var (index, serving) in servings.Index())
        {
            var row = first + index;
            sheet.Cell(row, 1).SetValue(serving.Seat);
            sheet.Cell(row, 2).SetText(string.Join(' ', serving.Order.ToCharArray()));
            foreach (var (place, code) in serving.Codes.Index())
                sheet.Cell(row, 3 + place).SetValue(code);
            sheet.Cell(row, 6).SetValue(serving.Odd);
            sheet.Cell(row, 7).AsEntry();
            sheet
                .Cell(row, 8)
                .SetFormulaA1(
                    FormattableString.Invariant(
                        $"IF(G{row}=\"\",\"\",IF(COUNTIF(C{row}:E{row},G{row})=0,\"not served\",IF(G{row}=F{row},1,0)))"
                    )
                );
            sheet.Range(row, 1, row, Last).AsTableRow();
        }
        sheet.Range(Head, 1, last, Last).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
        sheet.TabColor = Palette.Crust;
        sheet.SetUpPage(sheet.Range(1, 1, last, Last), XLPageOrientation.Portrait, pack.Class.Paper, pack.Class.Name, pack.Lesson.Title);
        sheet.ProtectFromSlips();

        void Result(int row, string what, string formula, string format)
        {
            sheet.Cell(row, 1).SetText(what);
            sheet.Cell(row, 3).SetFormulaA1(formula).Style.NumberFormat.Format = format;
            sheet.Cell(row, 3).Style.Font.Bold = true;
        }
    }
}
