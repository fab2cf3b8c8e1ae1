using ClassKit.Lessons.Packs;
using ClassKit.Workbooks.Packages;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Requisitions;

/// <summary>Makes the requisition as a workbook: change students, prices or what is in the store, and quantities and sums follow.</summary>
public static class RequisitionWriter
{
    /// <summary>The workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    public static byte[] Write(LessonPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"Requisition: {pack.Lesson.Title} – {pack.Class.Name}";
        RequisitionSheet.Write(workbook, pack);
        return workbook.ToBytesWithValues();
    }
}
