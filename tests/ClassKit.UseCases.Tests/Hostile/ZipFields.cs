using System.Buffers.Binary;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>
/// Every field of every header of a zip archive, each set to what breaks readers. Source: PKWARE's APPNOTE 6.3.10, 4.3.7, 4.3.12, 4.3.14 to
/// 4.3.16, 4.5.3.
/// </summary>
internal static class ZipFields
{
    private static readonly (string Name, byte[] Signature, (string Name, int At, int Length)[] Fields)[] Headers =
    [
        (
            "local",
            "PK\u0003\u0004"u8.ToArray(),
            [
                ("version", 4, 2),
                ("flags", 6, 2),
                ("method", 8, 2),
                ("time", 10, 2),
                ("date", 12, 2),
                ("checksum", 14, 4),
                ("packed", 18, 4),
                ("size", 22, 4),
                ("name length", 26, 2),
                ("extra length", 28, 2),
            ]
        ),
        (
            "directory",
            "PK\u0001\u0002"u8.ToArray(),
            [
                ("made by", 4, 2),
                ("version", 6, 2),
                ("flags", 8, 2),
                ("method", 10, 2),
                ("time", 12, 2),
                ("date", 14, 2),
                ("checksum", 16, 4),
                ("packed", 20, 4),
                ("size", 24, 4),
                ("name length", 28, 2),
                ("extra length", 30, 2),
                ("comment length", 32, 2),
                ("disk", 34, 2),
                ("inside", 36, 2),
                ("outside", 38, 4),
                ("offset", 42, 4),
            ]
        ),
        (
            "end",
            "PK\u0005\u0006"u8.ToArray(),
            [
                ("disk", 4, 2),
                ("first disk", 6, 2),
                ("entries here", 8, 2),
                ("entries", 10, 2),
                ("directory size", 12, 4),
                ("directory offset", 16, 4),
                ("comment length", 20, 2),
            ]
        ),
    ];

    private static readonly (string Name, byte[] Signature, (string Name, int At, int Length)[] Fields)[] WideHeaders =
    [
        (
            "wide end",
            "PK\u0006\u0006"u8.ToArray(),
            [
                ("length", 4, 8),
                ("made by", 12, 2),
                ("version", 14, 2),
                ("disk", 16, 4),
                ("first disk", 20, 4),
                ("entries here", 24, 8),
                ("entries", 32, 8),
                ("directory size", 40, 8),
                ("directory offset", 48, 8),
            ]
        ),
        ("locator", "PK\u0006\u0007"u8.ToArray(), [("disk", 4, 4), ("end's offset", 8, 8), ("disks", 16, 4)]),
    ];

    /// <summary>The changes to a plain archive: each field of its first entry's headers and of its end.</summary>
    public static IEnumerable<HostileFile> Of(string name, Func<byte[]> archive) => Changes(name, archive, Headers);

    /// <summary>
    /// The changes to an archive in zip64: sizes and offsets of an entry in its extra field, the wide end and its locator.
    /// </summary>
    public static IEnumerable<HostileFile> Wide(string name, Func<byte[]> archive)
    {
        string[] extras = ["size", "packed", "offset"];
        foreach (var (field, at) in extras.Select((field, at) => (field, at)))
        {
            foreach (var value in Values(8))
                yield return new($"{name}, zip64 {field} {value:X}", () => Widened(archive(), fields => fields[at] = value));
        }

        foreach (var length in new ushort[] { 0, 1, 7, 8, 23, 25, 65_535 })
            yield return new($"{name}, zip64 extra of {length}", () => Widened(archive(), _ => { }, length));
        foreach (var change in Changes(name + " of zip64", () => Widened(archive(), _ => { }), WideHeaders))
            yield return change;
    }

    private static IEnumerable<HostileFile> Changes(
        string name,
        Func<byte[]> archive,
        (string Name, byte[] Signature, (string Name, int At, int Length)[] Fields)[] headers
    ) =>
        from header in headers
        from field in header.Fields
        from value in Values(field.Length)
        select new HostileFile($"{name}, {header.Name} {field.Name} {value:X}", () =>
        {
            var bytes = (byte[])archive().Clone();
            Put(bytes, bytes.AsSpan().IndexOf(header.Signature) + field.At, field.Length, value);
            return bytes;
        });

    /// <summary>None, one, the largest, those around the middle where signs turn, and one in between.</summary>
    private static IEnumerable<ulong> Values(int length)
    {
        var all = length == 8 ? ulong.MaxValue : (1UL << (8 * length)) - 1;
        return new ulong[] { 0, 1, 99, all, all - 1, (all >> 1) + 1, all >> 1 }.Concat(
            length == 8 ? [uint.MaxValue, uint.MaxValue + 1UL] : []
        );
    }

    private static void Put(byte[] bytes, int at, int length, ulong value)
    {
        for (var place = 0; place < length; place++)
            bytes[at + place] = (byte)(value >> (8 * place));
    }

    /// <summary>
    /// An archive of one entry, with its sizes and offset moved into the extra field that zip64 has for them, and with the wide end.
    /// </summary>
    private static byte[] Widened(byte[] archive, Action<ulong[]> change, ushort length = 24)
    {
        var (directory, end) = (archive.AsSpan().LastIndexOf("PK\u0001\u0002"u8), archive.AsSpan().LastIndexOf("PK\u0005\u0006"u8));
        var head = archive[directory..end];
        ulong[] fields =
        [
            BinaryPrimitives.ReadUInt32LittleEndian(head.AsSpan(24)),
            BinaryPrimitives.ReadUInt32LittleEndian(head.AsSpan(20)),
            BinaryPrimitives.ReadUInt32LittleEndian(head.AsSpan(42)),
        ];
        change(fields);
        foreach (var at in new[] { 20, 24, 42 })
            Put(head, at, 4, uint.MaxValue);
        Put(head, 30, 2, 28);
        var entry = (byte[])[.. head, .. Bytes(1, 2), .. Bytes(length, 2), .. fields.SelectMany(field => Bytes(field, 8))];
        var (size, offset) = ((ulong)entry.Length, (ulong)directory);
        byte[] wideEnd =
        [
            .. "PK\u0006\u0006"u8,
            .. Bytes(44, 8),
            .. Bytes(45, 2),
            .. Bytes(45, 2),
            .. Bytes(0, 4),
            .. Bytes(0, 4),
            .. Bytes(1, 8),
            .. Bytes(1, 8),
            .. Bytes(size, 8),
            .. Bytes(offset, 8),
        ];
        byte[] locator = [.. "PK\u0006\u0007"u8, .. Bytes(0, 4), .. Bytes(offset + size, 8), .. Bytes(1, 4)];
        byte[] narrowEnd = [.. "PK\u0005\u0006"u8, .. Bytes(0, 4), .. Bytes(0xFFFF_FFFF, 4), .. Bytes(ulong.MaxValue, 8), .. Bytes(0, 2)];
        return [.. archive[..directory], .. entry, .. wideEnd, .. locator, .. narrowEnd];
    }

    private static byte[] Bytes(ulong value, int length)
    {
        var bytes = new byte[length];
        Put(bytes, 0, length, value);
        return bytes;
    }
}
