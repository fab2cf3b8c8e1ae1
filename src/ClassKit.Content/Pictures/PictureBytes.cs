using System.Buffers.Binary;

namespace ClassKit.Content.Pictures;

/// <summary>What a file is by its own first bytes, whatever its name says, and how large its picture is.</summary>
/// <remarks>Sources: PNG, W3C Recommendation of 2003, 5.2 and 11.2.2; JPEG, ITU-T T.81, annex B.</remarks>
internal static class PictureBytes
{
    private static ReadOnlySpan<byte> Png => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>The media type, width and height in pixels of a whole PNG or JPEG; null for anything else.</summary>
    public static (string Type, int Width, int Height)? Of(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith(Png) ? OfPng(bytes)
        : bytes is [0xFF, 0xD8, 0xFF, ..] ? OfJpeg(bytes)
        : null;

    /// <summary>True for a file that begins as a PNG or JPEG does.</summary>
    public static bool Begins(ReadOnlySpan<byte> bytes) => bytes.StartsWith(Png) || bytes is [0xFF, 0xD8, 0xFF, ..];

    private static (string, int, int)? OfPng(ReadOnlySpan<byte> bytes) =>
        bytes.Length >= 45 && bytes[12..16].SequenceEqual("IHDR"u8) && bytes[^8..^4].SequenceEqual("IEND"u8)
            ? (
                "image/png",
                Size(BinaryPrimitives.ReadUInt32BigEndian(bytes[16..])),
                Size(BinaryPrimitives.ReadUInt32BigEndian(bytes[20..]))
            )
            : null;

    /// <summary>Segments follow each other up to the one that says how large the picture is.</summary>
    private static (string, int, int)? OfJpeg(ReadOnlySpan<byte> bytes)
    {
        // The end of the image; some cameras write more behind it.
        if (bytes.LastIndexOf((ReadOnlySpan<byte>)[0xFF, 0xD9]) < 0)
            return null;
        for (var at = 2; at + 9 < bytes.Length && bytes[at] == 0xFF; )
        {
            var marker = bytes[at + 1];
            if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
                return (
                    "image/jpeg",
                    BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 7)..]),
                    BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 5)..])
                );
            at += marker == 0xFF ? 1 : 2 + Math.Max((int)BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 2)..]), 2);
        }
        return null;
    }

    private static int Size(uint pixels) => (int)Math.Min(pixels, int.MaxValue);
}
