using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// Values that take the places of what cells hold: as the caller gave them, or turned into keys once where they serve many cells.
/// </summary>
internal sealed class Replacements
{
    private readonly IReadOnlyDictionary<CellAddress, CellValue>? _given;
    private readonly Dictionary<CellKey, CellValue>? _byKey;

    private Replacements(IReadOnlyDictionary<CellAddress, CellValue>? given, Dictionary<CellKey, CellValue>? byKey) =>
        (_given, _byKey) = (given, byKey);

    public static Replacements None { get; } = new(null, null);

    /// <summary>Looks into the caller's dictionary as it is.</summary>
    public static Replacements Of(IReadOnlyDictionary<CellAddress, CellValue>? given) =>
        given is null || given.Count == 0 ? None : new(given, null);

    /// <summary>Copies the caller's dictionary.</summary>
    public static Replacements Copied(IReadOnlyDictionary<CellAddress, CellValue>? given, PreparedWorkbook workbook)
    {
        if (given is null || given.Count == 0)
            return None;
        var byKey = new Dictionary<CellKey, CellValue>(given.Count);
        foreach (var (address, value) in given)
        {
            if (workbook.FindSheet(address.Sheet) is var sheet and >= 0)
                byKey[new(sheet, address.Row, address.Column)] = value;
        }

        return new(null, byKey);
    }

    public bool TryGet(CellKey key, string sheet, out CellValue value)
    {
        value = default;
        if (_byKey is not null)
            return _byKey.TryGetValue(key, out value);
        return _given is not null && _given.TryGetValue(new(sheet, key.Row, key.Column), out value);
    }

    /// <summary>The places replaced on a sheet.</summary>
    public IEnumerable<(int Row, int Column)> On(int sheet, string name)
    {
        if (_byKey is not null)
            return _byKey.Keys.Where(key => key.Sheet == sheet).Select(key => (key.Row, key.Column));
        return _given is null
            ? []
            : _given
                .Keys.Where(cell => string.Equals(cell.Sheet, name, StringComparison.OrdinalIgnoreCase))
                .Select(cell => (cell.Row, cell.Column));
    }
}
