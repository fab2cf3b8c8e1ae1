using System.Collections.Concurrent;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>What all evaluations of one workbook share: its sheets by name, its names, and each formula parsed once.</summary>
internal sealed class PreparedWorkbook
{
    private readonly Dictionary<string, int> _sheets = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<(int Sheet, string Name), DefinedName> _names;
    private readonly ConcurrentDictionary<string, FormulaParse> _parses = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<CellKey, FormulaParse> _cells = new();

    public PreparedWorkbook(WorkbookSnapshot workbook)
    {
        Workbook = workbook;
        Sheets = new SheetIndex[workbook.Sheets.Count];
        for (var at = 0; at < Sheets.Length; at++)
        {
            Sheets[at] = new(at, workbook.Sheets[at]);
            _sheets.TryAdd(workbook.Sheets[at].Name, at);
        }

        _names = new(new NameComparer());
        foreach (var name in workbook.Names)
        {
            var sheet = name.Sheet is null ? -1 : FindSheet(name.Sheet);
            if (sheet >= 0 || name.Sheet is null) _names.TryAdd((sheet, name.Name), name);
        }
    }

    public WorkbookSnapshot Workbook { get; }

    public SheetIndex[] Sheets { get; }

    public int FindSheet(string name) => _sheets.GetValueOrDefault(name, -1);

    /// <summary>The name as a formula on that sheet sees it: its own sheet's before the workbook's.</summary>
    public DefinedName? FindName(int sheet, string name) =>
        _names.TryGetValue((sheet, name), out var own) || _names.TryGetValue((-1, name), out own) ? own : null;

    public FormulaParse Parse(CellKey cell, string text)
    {
        if (_cells.TryGetValue(cell, out var parse)) return parse;
        parse = CellFormula.Parse(text);
        _cells[cell] = parse;
        return parse;
    }

    public FormulaParse Parse(string text) => _parses.GetOrAdd(text, static text => CellFormula.Parse(text));

    private sealed class NameComparer : IEqualityComparer<(int Sheet, string Name)>
    {
        public bool Equals((int Sheet, string Name) x, (int Sheet, string Name) y) =>
            x.Sheet == y.Sheet && string.Equals(x.Name, y.Name, StringComparison.OrdinalIgnoreCase);

        public int GetHashCode((int Sheet, string Name) name) =>
            HashCode.Combine(name.Sheet, StringComparer.OrdinalIgnoreCase.GetHashCode(name.Name));
    }
}
