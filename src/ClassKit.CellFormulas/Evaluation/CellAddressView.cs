using System.Collections;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>The cells that an evaluation read, turned into addresses only when somebody looks.</summary>
internal sealed class CellAddressView(ICollection<CellKey> keys, CellKey without, WorkbookSnapshot workbook) : IReadOnlyCollection<CellAddress>
{
    private CellAddress[]? _addresses;

    public int Count => Addresses.Length;

    private CellAddress[] Addresses => _addresses ??= Sort();

    public IEnumerator<CellAddress> GetEnumerator() => ((IEnumerable<CellAddress>)Addresses).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private CellAddress[] Sort()
    {
        var sorted = keys.Where(key => key != without).ToArray();
        System.Array.Sort(sorted, static (a, b) => a.Packed.CompareTo(b.Packed));
        return System.Array.ConvertAll(sorted, key => new CellAddress(workbook.Sheets[key.Sheet].Name, key.Row, key.Column));
    }
}
