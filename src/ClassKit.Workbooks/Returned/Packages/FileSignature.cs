using System.Text;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Tells by its first bytes what a file is that is no zip archive.</summary>
internal static class FileSignature
{
    /// <summary>How much is looked at where a whole file would be too much.</summary>
    private const int Head = 4096;

    private static readonly (byte[] Start, Refusal Refusal)[] Starts =
    [
        ("%PDF"u8.ToArray(), Refusals.Likeness("a PDF document")),
        ([0x89, 0x50, 0x4E, 0x47], Refusals.Likeness("a picture (PNG)")),
        ([0xFF, 0xD8, 0xFF], Refusals.Likeness("a picture (JPEG)")),
        ("GIF8"u8.ToArray(), Refusals.Likeness("a picture (GIF)")),
        ("RIFF"u8.ToArray(), Refusals.Likeness("a picture or a recording")),
        ("II*\0"u8.ToArray(), Refusals.Likeness("a picture (TIFF)")),
        ("MM\0*"u8.ToArray(), Refusals.Likeness("a picture (TIFF)")),
        ("BM"u8.ToArray(), Refusals.Likeness("a picture (BMP)")),
        ("{\\rtf"u8.ToArray(), Refusals.OtherKind("a text document (RTF)")),
        ("Rar!"u8.ToArray(), Refusals.Packed("a packed archive (RAR)")),
        ([0x37, 0x7A, 0xBC, 0xAF], Refusals.Packed("a packed archive (7z)")),
        ([0x1F, 0x8B], Refusals.Packed("a packed archive (gzip)")),
        ("MZ"u8.ToArray(), Refusals.OtherKind("a program")),
    ];

    /// <summary>True for a file that starts as a zip archive does.</summary>
    public static bool IsZip(ReadOnlySpan<byte> file) =>
        file.StartsWith("PK\u0003\u0004"u8) || file.StartsWith("PK\u0005\u0006"u8);

    /// <summary>What to say of a file that is no zip archive.</summary>
    public static Refusal Explain(ReadOnlySpan<byte> file)
    {
        if (file.IsEmpty) return Refusals.Empty;
        if (!file.ContainsAnyExcept((byte)0)) return Refusals.OnlyZeros;
        if (CompoundFile.Recognises(file)) return CompoundFile.Explain(file);
        foreach (var (start, refusal) in Starts)
        {
            if (file.StartsWith(start)) return refusal;
        }

        if (file.Length > 8 && file[4..].StartsWith("ftyp"u8)) return Refusals.Likeness("a picture or a film from a phone");
        return IsText(file) ? ExplainText(file) : Refusals.OtherKind("something that no spreadsheet program writes");
    }

    private static Refusal ExplainText(ReadOnlySpan<byte> file)
    {
        var text = Decode(file[..Math.Min(file.Length, Head)]).TrimStart('\uFEFF', ' ', '\t', '\r', '\n');
        if (Contains(text, "urn:schemas-microsoft-com:office:spreadsheet")) return Refusals.OtherSpreadsheet("an Excel 2003 XML spreadsheet");
        if (Contains(text, "urn:oasis:names:tc:opendocument")) return Refusals.OtherSpreadsheet("a flat OpenDocument file (.fods)");
        if (text.StartsWith("<!doctype html", StringComparison.OrdinalIgnoreCase) || Contains(text, "<html"))
            return Refusals.OtherKind("a web page (perhaps the login page of a website instead of the download)");
        if (text.StartsWith('{') && Contains(text, "docs.google.com"))
            return Refusals.OtherKind("a link to a sheet that lies online");
        if (text.StartsWith('<')) return Refusals.OtherKind("a text file (XML)");
        return Refusals.Likeness("a text file (such as CSV)");
    }

    private static bool IsText(ReadOnlySpan<byte> file)
    {
        if (file is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..]) return true;
        foreach (var value in file[..Math.Min(file.Length, Head)])
        {
            if (value < 0x20 && value is not ((byte)'\t' or (byte)'\r' or (byte)'\n' or (byte)'\f')) return false;
        }

        return true;
    }

    private static string Decode(ReadOnlySpan<byte> head) => head switch
    {
        [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(head),
        [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(head),
        _ => Encoding.UTF8.GetString(head),
    };

    private static bool Contains(string text, string part) => text.Contains(part, StringComparison.OrdinalIgnoreCase);
}
