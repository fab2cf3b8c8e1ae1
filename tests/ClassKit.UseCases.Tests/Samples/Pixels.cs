using System.Buffers.Binary;
using System.IO.Compression;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>Pictures for tests, after PNG (W3C Recommendation of 2003, 11.2) and JPEG (ITU-T T.81, annex B).</summary>
internal static class Pixels
{
    private static readonly byte[] Signature = [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>A grey picture that any program opens.</summary>
    public static byte[] Png(int width, int height)
    {
        using var png = new MemoryStream();
        png.Write(Signature);
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        head[8] = 8;
        Chunk(png, "IHDR"u8, head);
        using var packed = new MemoryStream();
        using (var pack = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            pack.Write(new byte[(width + 1) * height]);
        Chunk(png, "IDAT"u8, packed.ToArray());
        Chunk(png, "IEND"u8, []);
        return png.ToArray();
    }

    /// <summary>As much of a JPEG as says what it is and how large.</summary>
    public static byte[] Jpeg(ushort width, ushort height) =>
        [
            0xFF,
            0xD8,
            0xFF,
            0xE0,
            0,
            4,
            0,
            0,
            0xFF,
            0xC0,
            0,
            11,
            8,
            (byte)(height >> 8),
            (byte)height,
            (byte)(width >> 8),
            (byte)width,
            1,
            1,
            0x11,
            0,
            0xFF,
            0xD9,
        ];

    private static void Chunk(MemoryStream png, ReadOnlySpan<byte> kind, byte[] data)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
        png.Write(number);
        byte[] held = [.. kind, .. data];
        png.Write(held);
        BinaryPrimitives.WriteUInt32BigEndian(number, Crc(held));
        png.Write(number);
    }

    /// <summary>The check of PNG, annex D.</summary>
    private static uint Crc(byte[] bytes)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var one in bytes)
        {
            crc ^= one;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) != 0 ? (crc >> 1) ^ 0xEDB88320u : crc >> 1;
        }
        return ~crc;
    }
}
