using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Packs;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Requisitions;

/// <summary>What somebody in the class must keep away from, in the words of the page: for the instructor and whoever orders.</summary>
internal static class AllergySheet
{
    private const int First = 3;
    private const double TextWidth = 96;

    /// <summary>Points of height for a line of text, and characters that fit one.</summary>
    private const double LineHeight = 15;

    private const double LineLength = 105;

    public static void Write(XLWorkbook workbook, LessonPack pack)
    {
        var sheet = workbook.AddWorksheet("Allergies");
        sheet.AsPage();
        sheet.Range(1, 1, 1, 2).AsTitle();
        sheet.Cell(1, 1).SetText(" What somebody in the class must keep away from");
        sheet.Cell(2, 1).SetText("For you and whoever orders: no page for students tells of it.").AsQuiet();
        sheet.Column(1).Width = 34;
        sheet.Column(2).Width = TextWidth;
        var row = First;
        foreach (var (name, text) in Lines(pack))
        {
            sheet.Range(row, 1, row, 2).AsTableRow();
            sheet.Cell(row, 1).SetText(name).Wrapped().Style.Font.Bold = true;
            sheet.Cell(row, 2).SetText(text).Wrapped();
            sheet.Row(row).Height = LineHeight * Math.Max(Math.Ceiling(text.Length / LineLength), Math.Ceiling(name.Length / 30.0)) + 4;
            row++;
        }
        sheet.TabColor = Palette.Crust;
        sheet.SetUpPage(sheet.Range(1, 1, row - 1, 2), XLPageOrientation.Landscape, pack.Class.Paper, pack.Class.Name, pack.Lesson.Title);
    }

    private static IEnumerable<(string Name, string Text)> Lines(LessonPack pack)
    {
        foreach (var concern in pack.Concerns)
        {
            yield return (AllergyText.Of(concern.Need), concern.Need.Note);
            foreach (var bread in concern.Breads)
                yield return (bread.Card.Bread.Formula.Title, AllergyText.Of(bread));
        }
        foreach (var caution in AllergyCare.For(pack.Class.Allergies))
            yield return (caution.Hazard, $"{pack.Words(caution.Text)} ({caution.Source})");
    }
}
