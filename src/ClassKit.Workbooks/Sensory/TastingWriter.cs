using ClassKit.Lessons.Packs;
using ClassKit.Workbooks.Packages;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Sensory;

/// <summary>
/// Makes the workbook that works a tasting out: the instructor types what the sheets say, and what the class found comes out.
/// </summary>
public static class TastingWriter
{
    /// <summary>The workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    public static byte[] Write(LessonPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"Tasting: {pack.Lesson.Title} – {pack.Class.Name}";
        var tasting = pack.Tasting;
        TriangleSheet.Write(workbook.AddWorksheet("Triangle"), pack, tasting);
        GuessesSheet.Write(workbook.AddWorksheet("Guesses"), pack, tasting);
        RatingsSheet.Write(workbook.AddWorksheet("Scales"), pack, tasting);
        return workbook.ToBytesWithValues();
    }
}
