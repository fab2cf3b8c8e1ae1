using System.Collections;
using ClassKit.CellFormulas.Sheets;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>The cells that an evaluation read, put in order and turned into addresses only when somebody looks.</summary>
internal sealed class CellAddressView : IReadOnlyCollection<CellAddress>
{
    private readonly Func<IReadOnlyCollection<CellAddress>>? _find;
    private readonly CellKey[] _keys = [];
    private readonly WorkbookSnapshot? _workbook;
    private IReadOnlyCollection<CellAddress>? _addresses;

    public CellAddressView(CellKey[] keys, WorkbookSnapshot workbook) => (_keys, _workbook) = (keys, workbook);

    public CellAddressView(Func<IReadOnlyCollection<CellAddress>> find) => _find = find;

    public int Count => Addresses.Count;

    private IReadOnlyCollection<CellAddress> Addresses => _addresses ??= _find?.Invoke() ?? Sorted();

    public IEnumerator<CellAddress> GetEnumerator() => Addresses.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private CellAddress[] Sorted()
    {
        Array.Sort(_keys, static (a, b) => a.Packed.CompareTo(b.Packed));
        return Array.ConvertAll(_keys, key => new CellAddress(_workbook!.Sheets[key.Sheet].Name, key.Row, key.Column));
    }
}
