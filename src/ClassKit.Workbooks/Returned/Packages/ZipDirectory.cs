using System.Buffers.Binary;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>The list of entries at the end of a zip archive, looked over before anyone reads it into memory.</summary>
/// <remarks>
/// Source: PKWARE's APPNOTE 6.3.10, 4.3.12. What the archive says of its own length may be wrong, so that the entries are counted by their
/// signature.
/// </remarks>
public static class ZipDirectory
{
    private const int HeaderLength = 46;

    private static ReadOnlySpan<byte> Signature => "PK\u0001\u0002"u8;

    /// <summary>True if the list has at most so many entries, and its names and extra fields so many bytes together.</summary>
    public static bool IsWithin(ReadOnlySpan<byte> file, int entries, int bytes)
    {
        for (var next = file.IndexOf(Signature); next >= 0; next = file.IndexOf(Signature))
        {
            file = file[next..];
            if (file.Length < HeaderLength)
                return true;
            bytes -= Length(file, 28) + Length(file, 30) + Length(file, 32);
            if (--entries < 0 || bytes < 0)
                return false;
            file = file[HeaderLength..];
        }

        return true;
    }

    private static int Length(ReadOnlySpan<byte> header, int offset) => BinaryPrimitives.ReadUInt16LittleEndian(header[offset..]);
}
