using ClosedXML.Excel;

namespace ClassKit.Workbooks.Look;

/// <summary>Protection against slips, not against people: no password, and everything allowed that cannot hurt the givens.</summary>
internal static class ProtectedSheet
{
    /// <summary>Objects stay allowed too: students paste photographs of their dough.</summary>
    private const XLSheetProtectionElements Allowed =
        XLSheetProtectionElements.SelectLockedCells
        | XLSheetProtectionElements.SelectUnlockedCells
        | XLSheetProtectionElements.FormatCells
        | XLSheetProtectionElements.FormatColumns
        | XLSheetProtectionElements.FormatRows
        | XLSheetProtectionElements.InsertRows
        | XLSheetProtectionElements.InsertColumns
        | XLSheetProtectionElements.InsertHyperlinks
        | XLSheetProtectionElements.EditObjects;

    /// <summary>What an instructor is told of a sheet whose entries have frames.</summary>
    public const string Words = "Framed cells can be changed: everything else follows, and is locked against slips, without a password.";

    public static void ProtectFromSlips(this IXLWorksheet sheet) => sheet.Protect().AllowElement(Allowed);
}
