using ClassKit.Lessons.Packs;
using ClassKit.Workbooks.Packages;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Observations;

/// <summary>
/// Makes the observation sheet as a workbook: measurements go in, the difference to what was predicted and the question that it asks come
/// out.
/// </summary>
public static class ObservationWriter
{
    /// <summary>The workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    public static byte[] Write(LessonPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"Observations: {pack.Lesson.Title} – {pack.Class.Name}";
        var sheet = new ObservationSheet(workbook.AddWorksheet(ObservedWords.Sheet), pack);
        var questions = new QuestionSheet(workbook.AddWorksheet("Questions"), pack);
        for (var bread = 0; bread < pack.Comparison.Count; bread++)
            sheet.Write(bread, questions);
        sheet.Finish();
        questions.Finish();
        return workbook.ToBytesWithValues();
    }
}
