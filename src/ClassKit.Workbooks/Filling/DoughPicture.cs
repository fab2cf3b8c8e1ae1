using System.Buffers.Binary;
using System.IO.Compression;
using System.IO.Hashing;

namespace ClassKit.Workbooks.Filling;

/// <summary>A picture made from nothing: a round, lighter dough on a dark bench.</summary>
/// <remarks>Source: the PNG specification (ISO/IEC 15948): chunks with CRC-32, deflated scanlines, 8-bit colour.</remarks>
internal static class DoughPicture
{
    /// <summary>In pixels.</summary>
    public const int Width = 144;

    /// <summary>In pixels.</summary>
    public const int Height = 96;

    private static readonly byte[] Signature = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    public static byte[] Png { get; } = Make();

    private static byte[] Make()
    {
        Span<byte> header = stackalloc byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, Width);
        BinaryPrimitives.WriteInt32BigEndian(header[4..], Height);
        (header[8], header[9]) = (8, 2);

        using var png = new MemoryStream();
        png.Write(Signature);
        WriteChunk(png, "IHDR"u8, header);
        WriteChunk(png, "IDAT"u8, Scanlines());
        WriteChunk(png, "IEND"u8, []);
        return png.ToArray();
    }

    private static byte[] Scanlines()
    {
        using var packed = new MemoryStream();
        using (var lines = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            for (var y = 0; y < Height; y++)
            {
                lines.WriteByte(0);
                for (var x = 0; x < Width; x++)
                    lines.Write(Colour(x, y));
            }
        }

        return packed.ToArray();
    }

    private static ReadOnlySpan<byte> Colour(int x, int y)
    {
        const int Radius = 36;
        var (fromX, fromY) = (x - Width / 2, y - Height / 2);
        var distance = fromX * fromX + fromY * fromY;
        if (distance > Radius * Radius)
            return new byte[] { 74, 58, 48 };
        var shade = (byte)(distance * 60 / (Radius * Radius));
        return new[] { (byte)(245 - shade), (byte)(225 - shade), (byte)(190 - shade) };
    }

    private static void WriteChunk(MemoryStream png, ReadOnlySpan<byte> type, ReadOnlySpan<byte> data)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
        png.Write(number);
        png.Write(type);
        png.Write(data);
        var crc = new Crc32();
        crc.Append(type);
        crc.Append(data);
        BinaryPrimitives.WriteUInt32BigEndian(number, crc.GetCurrentHashAsUInt32());
        png.Write(number);
    }
}
