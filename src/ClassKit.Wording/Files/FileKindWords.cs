using ClassKit.Grading.Findings.Refusals;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Files;

/// <summary>What a file is that is no workbook, and what to hand in instead.</summary>
internal static class FileKindWords
{
    private const string SaveAgain =
        "Open your workbook in a spreadsheet program, save it as Excel workbook (.xlsx), and hand that file in.";
    private const string NoFormulas =
        "It shows numbers but none of the formulas behind them. Please hand in the workbook itself: in the program or app that you worked in, save or share a copy as Excel workbook (.xlsx).";
    private const string Unpack = "Please unpack it and hand in the workbook (.xlsx) that is inside.";

    public static string Of(Refusal.OtherKind other)
    {
        var named = other.Ending is { } ending ? $" (Its name ends in {ending}, but a new name does not convert a file.)" : "";
        return $"The file is {Name(other)}, not {(IsSpreadsheet(other.Kind) ? "an Excel workbook (.xlsx)" : "a workbook")}. {WayOut(other.Kind)}{named}";
    }

    private static bool IsSpreadsheet(FileKind kind) =>
        kind is FileKind.OldWorkbook or FileKind.XmlWorkbook or FileKind.BinaryWorkbook or FileKind.FlatOpenDocument or FileKind.Numbers;

    /// <summary>
    /// A likeness of a workbook lacks its formulas; an archive may have one inside; anything else may have been saved so by mistake.
    /// </summary>
    private static string WayOut(FileKind kind) =>
        kind switch
        {
            FileKind.Pdf
            or FileKind.Png
            or FileKind.Jpeg
            or FileKind.Gif
            or FileKind.Tiff
            or FileKind.Bmp
            or FileKind.PictureOrRecording
            or FileKind.PhonePicture
            or FileKind.PlainText => NoFormulas,
            FileKind.ArchiveWithWorkbook or FileKind.Rar or FileKind.SevenZip or FileKind.Gzip => Unpack,
            _ => SaveAgain,
        };

    private static string Name(Refusal.OtherKind other) =>
        other.Kind switch
        {
            FileKind.Pdf => "a PDF document",
            FileKind.Png => "a picture (PNG)",
            FileKind.Jpeg => "a picture (JPEG)",
            FileKind.Gif => "a picture (GIF)",
            FileKind.Tiff => "a picture (TIFF)",
            FileKind.Bmp => "a picture (BMP)",
            FileKind.PictureOrRecording => "a picture or a recording",
            FileKind.PhonePicture => "a picture or a film from a phone",
            FileKind.PlainText => "a text file (such as CSV)",
            FileKind.Rtf => "a text document (RTF)",
            FileKind.Program => "a program",
            FileKind.Unknown => "something that no spreadsheet program writes",
            FileKind.WebPage => "a web page (perhaps the login page of a website instead of the download)",
            FileKind.OnlineLink => "a link to a sheet that lies online",
            FileKind.Xml => "a text file (XML)",
            FileKind.OldDocument => "an old Word document (.doc)",
            FileKind.OldOffice => "an Office file as before 2007",
            FileKind.Document => "a text document (.docx)",
            FileKind.Presentation => "a presentation (.pptx)",
            FileKind.OpenDocument => "an OpenDocument text, drawing or presentation",
            FileKind.EmptyArchive => "a zip archive without a workbook in it",
            FileKind.ArchiveWithWorkbook => other.Inside is { } inside
                ? $"a zip archive with '{Quoted.Of(inside)}' in it"
                : "a zip archive with a workbook in it",
            FileKind.Rar => "a packed archive (RAR)",
            FileKind.SevenZip => "a packed archive (7z)",
            FileKind.Gzip => "a packed archive (gzip)",
            FileKind.OldWorkbook => "an old Excel workbook (.xls, as before 2007)",
            FileKind.XmlWorkbook => "an Excel 2003 XML spreadsheet",
            FileKind.BinaryWorkbook => "an Excel binary workbook (.xlsb)",
            FileKind.FlatOpenDocument => "a flat OpenDocument file (.fods)",
            FileKind.Numbers => "a Numbers document (.numbers)",
        };
}
