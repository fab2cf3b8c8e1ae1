using System.Buffers.Binary;
using System.Text;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>Damage of the kinds that transfers, failing disks and attackers do, decided by a seed.</summary>
internal sealed class Mutation(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>Changes some bytes anywhere.</summary>
    public byte[] Bytes(byte[] file)
    {
        var changed = (byte[])file.Clone();
        for (var count = 1 << _random.Next(7); count > 0; count--)
            changed[_random.Next(changed.Length)] = (byte)_random.Next(256);
        return changed;
    }

    /// <summary>Takes a piece out, doubles it, or moves it.</summary>
    public byte[] Pieces(byte[] file)
    {
        var (from, to) = (_random.Next(file.Length), _random.Next(file.Length));
        if (from > to)
            (from, to) = (to, from);
        return _random.Next(4) switch
        {
            0 => [.. file[..from], .. file[to..]],
            1 => [.. file[..to], .. file[from..]],
            2 => file[..Math.Max(4, from)],
            _ => [.. file[..from], .. new byte[to - from], .. file[to..]],
        };
    }

    /// <summary>Changes a field of a header of the archive: sizes, offsets, methods, flags, checksums, lengths of names.</summary>
    public byte[] Headers(byte[] file)
    {
        var changed = (byte[])file.Clone();
        var (signature, length) = _random.Next(3) switch
        {
            0 => ("PK\u0001\u0002", 46),
            1 => ("PK\u0003\u0004", 30),
            _ => ("PK\u0005\u0006", 22),
        };
        var places = new List<int>();
        var mark = Encoding.ASCII.GetBytes(signature);
        for (
            var at = changed.AsSpan().IndexOf(mark);
            at >= 0;
            at = changed.AsSpan(at + 4).IndexOf(mark) is >= 0 and var next ? at + 4 + next : -1
        )
            places.Add(at);
        var place = places[_random.Next(places.Count)] + 4 + _random.Next(length - 6);
        if (place + 4 > changed.Length)
            return changed;
        uint[] values = [0, 1, 0xFFFF, 0xFFFFFFFF, 0x7FFFFFFF, 0x80000000, (uint)changed.Length, (uint)_random.Next()];
        BinaryPrimitives.WriteUInt32LittleEndian(changed.AsSpan(place), values[_random.Next(values.Length)]);
        return changed;
    }

    /// <summary>Changes XML between its marks, so that much of it stays XML.</summary>
    public string Xml(string xml)
    {
        for (var count = 1 + _random.Next(4); count > 0; count--)
        {
            var marks = Enumerable.Range(0, xml.Length).Where(at => xml[at] is '<' or '>' or '"' or ' ' or '/').ToList();
            if (marks.Count < 2)
                return xml + "<";
            var at = _random.Next(marks.Count - 1);
            var (from, to) = (marks[at], marks[Math.Min(marks.Count - 1, at + 1 + _random.Next(6))]);
            string[] values =
            [
                "0",
                "-1",
                "99999999999",
                "1048577",
                "XFD1048576",
                "A0",
                "NaN",
                "INF",
                "1E400",
                "true",
                "s",
                "str",
                "shared",
                "array",
                "A1:XFD1048576",
                "B2:A1",
                "#N/A",
                "_xD83D_",
                "&#xD800;",
                "&#0;",
                "&lt;",
                "\u0001",
                "\uFFFE",
                "rId1",
                "../../../../etc/passwd",
                "http://example.org/x",
                "=1/0",
                "SUM(A:XFD)",
                "INDIRECT(A1)",
                new string('(', 5000),
                new string('9', 400),
                "1.7976931348623157E+308",
                "4.9E-324",
            ];
            xml = _random.Next(6) switch
            {
                0 => xml[..(from + 1)] + xml[to..],
                1 => xml[..to] + xml[from..],
                2 => xml[..from],
                3 or 4 => xml[..(from + 1)] + values[_random.Next(values.Length)] + xml[to..],
                _ => xml[..(from + 1)] + xml[(from + 1)..to] + xml[(from + 1)..to] + xml[to..],
            };
        }

        return xml;
    }

    public T Pick<T>(IReadOnlyCollection<T> of) => of.ElementAt(_random.Next(of.Count));
}
