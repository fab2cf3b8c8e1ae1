using System.Text;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Tells by its first bytes what a file is that is no zip archive.</summary>
internal static class FileSignature
{
    /// <summary>How much is looked at where a whole file would be too much.</summary>
    private const int Head = 4096;

    private static readonly (byte[] Start, FileKind Kind)[] Starts =
    [
        ("%PDF"u8.ToArray(), FileKind.Pdf),
        ([0x89, 0x50, 0x4E, 0x47], FileKind.Png),
        ([0xFF, 0xD8, 0xFF], FileKind.Jpeg),
        ("GIF8"u8.ToArray(), FileKind.Gif),
        ("RIFF"u8.ToArray(), FileKind.PictureOrRecording),
        ("II*\0"u8.ToArray(), FileKind.Tiff),
        ("MM\0*"u8.ToArray(), FileKind.Tiff),
        ("BM"u8.ToArray(), FileKind.Bmp),
        ("{\\rtf"u8.ToArray(), FileKind.Rtf),
        ("Rar!"u8.ToArray(), FileKind.Rar),
        ([0x37, 0x7A, 0xBC, 0xAF], FileKind.SevenZip),
        ([0x1F, 0x8B], FileKind.Gzip),
        ("MZ"u8.ToArray(), FileKind.Program),
    ];

    /// <summary>True for a file that starts as a zip archive does.</summary>
    public static bool IsZip(ReadOnlySpan<byte> file) => file.StartsWith("PK\u0003\u0004"u8) || file.StartsWith("PK\u0005\u0006"u8);

    /// <summary>What to say of a file that is no zip archive.</summary>
    public static Refusal Explain(ReadOnlySpan<byte> file)
    {
        if (file.IsEmpty)
            return new Refusal.Empty();
        if (!file.ContainsAnyExcept((byte)0))
            return new Refusal.OnlyZeros();
        if (CompoundFile.Recognises(file))
            return CompoundFile.Explain(file);
        foreach (var (start, kind) in Starts)
        {
            if (file.StartsWith(start))
                return new Refusal.OtherKind(kind);
        }

        if (file.Length > 8 && file[4..].StartsWith("ftyp"u8))
            return new Refusal.OtherKind(FileKind.PhonePicture);
        return IsText(file) ? ExplainText(file) : new Refusal.OtherKind(FileKind.Unknown);
    }

    private static Refusal.OtherKind ExplainText(ReadOnlySpan<byte> file)
    {
        var text = Decode(file[..Math.Min(file.Length, Head)]).TrimStart('\uFEFF', ' ', '\t', '\r', '\n');
        if (Contains(text, "urn:schemas-microsoft-com:office:spreadsheet"))
            return new Refusal.OtherKind(FileKind.XmlWorkbook);
        if (Contains(text, "urn:oasis:names:tc:opendocument"))
            return new Refusal.OtherKind(FileKind.FlatOpenDocument);
        if (text.StartsWith("<!doctype html", StringComparison.OrdinalIgnoreCase) || Contains(text, "<html"))
            return new Refusal.OtherKind(FileKind.WebPage);
        if (text.StartsWith('{') && Contains(text, "docs.google.com"))
            return new Refusal.OtherKind(FileKind.OnlineLink);
        if (text.StartsWith('<'))
            return new Refusal.OtherKind(FileKind.Xml);
        return new Refusal.OtherKind(FileKind.PlainText);
    }

    private static bool IsText(ReadOnlySpan<byte> file)
    {
        if (file is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
            return true;
        foreach (var value in file[..Math.Min(file.Length, Head)])
        {
            if (value < 0x20 && value is not ((byte)'\t' or (byte)'\r' or (byte)'\n' or (byte)'\f'))
                return false;
        }

        return true;
    }

    private static string Decode(ReadOnlySpan<byte> head) =>
        head switch
        {
            [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(head),
            [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(head),
            _ => Encoding.UTF8.GetString(head),
        };

    private static bool Contains(string text, string part) => text.Contains(part, StringComparison.OrdinalIgnoreCase);
}
