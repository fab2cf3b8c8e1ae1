using System.Text;

namespace ClassKit.UseCases.Intake;

/// <summary>
/// Reads the names in an archive that do not say how they are written: as UTF-8 where they are, else as the first program to pack archives
/// did.
/// </summary>
/// <remarks>
/// Source: PKWARE's APPNOTE 6.3.10, D.1: names are of IBM code page 437 unless marked as UTF-8; many programs write UTF-8 and leave the
/// mark out.
/// </remarks>
internal sealed class ZipNames : Encoding
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private static readonly Encoding Old = CodePagesEncodingProvider.Instance.GetEncoding(437) ?? Latin1;

    public static ZipNames Instance { get; } = new();

    public override int GetByteCount(char[] chars, int index, int count) => Strict.GetByteCount(chars, index, count);

    public override int GetBytes(char[] chars, int charIndex, int charCount, byte[] bytes, int byteIndex) =>
        Strict.GetBytes(chars, charIndex, charCount, bytes, byteIndex);

    public override int GetCharCount(byte[] bytes, int index, int count) =>
        For(bytes.AsSpan(index, count)).GetCharCount(bytes, index, count);

    public override int GetChars(byte[] bytes, int byteIndex, int byteCount, char[] chars, int charIndex) =>
        For(bytes.AsSpan(byteIndex, byteCount)).GetChars(bytes, byteIndex, byteCount, chars, charIndex);

    public override int GetMaxByteCount(int charCount) => Strict.GetMaxByteCount(charCount);

    public override int GetMaxCharCount(int byteCount) => Strict.GetMaxCharCount(byteCount);

    private static Encoding For(ReadOnlySpan<byte> name) => System.Text.Unicode.Utf8.IsValid(name) ? Strict : Old;
}
