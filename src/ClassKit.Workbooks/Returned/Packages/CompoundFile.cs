using System.Text;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>The container of Office files before 2007, and of encrypted ones ever since.</summary>
/// <remarks>
/// Source: Microsoft's open specifications [MS-CFB], 2.2 (the signature) and [MS-OFFCRYPTO], 2.3.2 (the stream of an encrypted package).
/// The directory holds the names of the streams in UTF-16, so that finding a name in the bytes tells enough for an explanation.
/// </remarks>
internal static class CompoundFile
{
    private static ReadOnlySpan<byte> Signature => [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];

    public static bool Recognises(ReadOnlySpan<byte> file) => file.StartsWith(Signature);

    public static Refusal Explain(ReadOnlySpan<byte> file)
    {
        if (Has(file, "EncryptedPackage"))
            return new Refusal.PasswordProtected();
        if (Has(file, "Workbook") || Has(file, "Book"))
            return new Refusal.OtherKind(FileKind.OldWorkbook);
        if (Has(file, "WordDocument"))
            return new Refusal.OtherKind(FileKind.OldDocument);
        return new Refusal.OtherKind(FileKind.OldOffice);
    }

    private static bool Has(ReadOnlySpan<byte> file, string stream) => file.IndexOf(Encoding.Unicode.GetBytes(stream + "\0")) >= 0;
}
