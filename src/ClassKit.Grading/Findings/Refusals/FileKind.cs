namespace ClassKit.Grading.Findings.Refusals;

/// <summary>What a returned file can be instead of a workbook.</summary>
public enum FileKind
{
    /// <summary>A PDF document.</summary>
    Pdf,

    /// <summary>A picture, PNG.</summary>
    Png,

    /// <summary>A picture, JPEG.</summary>
    Jpeg,

    /// <summary>A picture, GIF.</summary>
    Gif,

    /// <summary>A picture, TIFF.</summary>
    Tiff,

    /// <summary>A picture, BMP.</summary>
    Bmp,

    /// <summary>A picture or a recording in a RIFF container.</summary>
    PictureOrRecording,

    /// <summary>A picture or a film as phones take them.</summary>
    PhonePicture,

    /// <summary>A text such as comma-separated values.</summary>
    PlainText,

    /// <summary>A text document, RTF.</summary>
    Rtf,

    /// <summary>A program.</summary>
    Program,

    /// <summary>Something that no spreadsheet program writes.</summary>
    Unknown,

    /// <summary>A web page.</summary>
    WebPage,

    /// <summary>A link to a sheet that lies online.</summary>
    OnlineLink,

    /// <summary>A text in XML.</summary>
    Xml,

    /// <summary>A Word document as before 2007.</summary>
    OldDocument,

    /// <summary>Another Office file as before 2007.</summary>
    OldOffice,

    /// <summary>A text document, .docx.</summary>
    Document,

    /// <summary>A presentation, .pptx.</summary>
    Presentation,

    /// <summary>An OpenDocument text, drawing or presentation.</summary>
    OpenDocument,

    /// <summary>A zip archive without a workbook in it.</summary>
    EmptyArchive,

    /// <summary>A zip archive with a workbook in it.</summary>
    ArchiveWithWorkbook,

    /// <summary>An archive, RAR.</summary>
    Rar,

    /// <summary>An archive, 7z.</summary>
    SevenZip,

    /// <summary>An archive, gzip.</summary>
    Gzip,

    /// <summary>An Excel workbook as before 2007, .xls.</summary>
    OldWorkbook,

    /// <summary>An Excel 2003 XML spreadsheet.</summary>
    XmlWorkbook,

    /// <summary>An Excel binary workbook, .xlsb.</summary>
    BinaryWorkbook,

    /// <summary>A flat OpenDocument spreadsheet, .fods.</summary>
    FlatOpenDocument,

    /// <summary>A Numbers document.</summary>
    Numbers,
}
