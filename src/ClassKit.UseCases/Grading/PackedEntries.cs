using System.Collections;
using System.IO.Compression;
using System.Text.Json;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// A list of grades.json as packed bytes, some fiftieth of what its entries take in memory; they are made anew whenever they are gone
/// through.
/// </summary>
internal sealed class PackedEntries<T> : IReadOnlyList<T>
{
    private static readonly JsonSerializerOptions Plain = new(JsonStyle.For(GradesShape.Default)) { WriteIndented = false };

    private readonly byte[] _packed;

    public PackedEntries(IReadOnlyList<T> entries)
    {
        Count = entries.Count;
        using var packed = new MemoryStream();
        using (var packing = new DeflateStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            JsonSerializer.Serialize(packing, entries, Plain);
        _packed = packed.ToArray();
    }

    public int Count { get; }

    public T this[int index] => Unpacked()[index];

    public IEnumerator<T> GetEnumerator() => Unpacked().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private IReadOnlyList<T> Unpacked()
    {
        using var unpacking = new DeflateStream(new MemoryStream(_packed, writable: false), CompressionMode.Decompress);
        return JsonSerializer.Deserialize<IReadOnlyList<T>>(unpacking, Plain)!;
    }
}
