using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>What all evaluations of one workbook share: its sheets by name, its names, and each formula parsed once.</summary>
internal sealed class PreparedWorkbook
{
    private readonly Dictionary<string, int> _sheets = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<(int Sheet, string Name), DefinedName> _names;
    private readonly ConcurrentDictionary<string, FormulaParse> _parses = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<CellKey, FormulaParse> _cells = new();
    private readonly ConcurrentDictionary<(int Sheet, NameNode Node), NameTarget> _targets = new(new SameNode());
    private readonly FormulaParses? _shared;

    /// <param name="workbook">The workbook.</param>
    /// <param name="shared">Parses that others have use of too; null for none.</param>
    public PreparedWorkbook(WorkbookSnapshot workbook, FormulaParses? shared = null)
    {
        _shared = shared;
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
            if (sheet >= 0 || name.Sheet is null)
                _names.TryAdd((sheet, name.Name), name);
        }
    }

    public WorkbookSnapshot Workbook { get; }

    public SheetIndex[] Sheets { get; }

    /// <summary>A cell as messages name it.</summary>
    public CellAddress AddressOf(CellKey key) => new(Workbook.Sheets[key.Sheet].Name, key.Row, key.Column);

    public int FindSheet(string name) => _sheets.GetValueOrDefault(name, -1);

    /// <summary>A table by its name, or the one that a cell lies in; null if there is none.</summary>
    public TableSnapshot? FindTable(string? name, int sheet, int row, int column)
    {
        foreach (var table in Workbook.Tables)
        {
            if (name is not null && string.Equals(table.Name, name, StringComparison.OrdinalIgnoreCase))
                return table;
            if (name is not null || FindSheet(table.Sheet) != sheet)
                continue;
            if (row >= table.Top && row <= table.Bottom && column >= table.Left && column < table.Left + table.Columns.Count)
                return table;
        }

        return null;
    }

    /// <summary>What a name in the formula of a cell stands for, looked up once.</summary>
    public NameTarget Resolve(int sheet, NameNode node)
    {
        if (_targets.TryGetValue((sheet, node), out var target))
            return target;
        target = FindTarget(sheet, node);
        _targets[(sheet, node)] = target;
        return target;
    }

    /// <summary>What a name stands for as a formula on that sheet sees it: its own sheet's names come before the workbook's.</summary>
    public NameTarget FindTarget(int sheet, NameNode node)
    {
        if (node.Sheet is not null)
            sheet = FindSheet(node.Sheet);
        if (sheet < 0)
            return new(CellError.Reference, new Obstacle.NoSheet(node.Sheet!));
        if (!_names.TryGetValue((sheet, node.Name), out var name) && !_names.TryGetValue((-1, node.Name), out name))
        {
            // A table's name alone means its data.
            var isTable = node.Sheet is null && FindTable(node.Name, sheet, 0, 0) is not null;
            return isTable ? new(Parse(node.Name + "[]").Formula, null) : new(CellError.Name, new Obstacle.NoName(node.Name));
        }

        var formula = Parse(name.Formula).Formula;
        return new(
            formula,
            formula?.Root is ReferenceNode { Sheet: { } on, Last: null, First: { RowFixed: true, ColumnFixed: true } cell }
            && FindSheet(on) is var at and >= 0
                ? new CellKey(at, cell.Row, cell.Column)
                : null
        );
    }

    public FormulaParse Parse(CellKey cell, string text)
    {
        if (_cells.TryGetValue(cell, out var parse))
            return parse;
        parse = _shared?.Of(text) ?? CellFormula.Parse(text);
        _cells[cell] = parse;
        return parse;
    }

    public FormulaParse Parse(string text) => _parses.GetOrAdd(text, static text => CellFormula.Parse(text));

    /// <summary>A node is itself; where its formula stands in cells of two sheets, each may see another name.</summary>
    private sealed class SameNode : IEqualityComparer<(int Sheet, NameNode Node)>
    {
        public bool Equals((int Sheet, NameNode Node) x, (int Sheet, NameNode Node) y) =>
            x.Sheet == y.Sheet && ReferenceEquals(x.Node, y.Node);

        public int GetHashCode((int Sheet, NameNode Node) place) => HashCode.Combine(place.Sheet, RuntimeHelpers.GetHashCode(place.Node));
    }

    private sealed class NameComparer : IEqualityComparer<(int Sheet, string Name)>
    {
        public bool Equals((int Sheet, string Name) x, (int Sheet, string Name) y) =>
            x.Sheet == y.Sheet && string.Equals(x.Name, y.Name, StringComparison.OrdinalIgnoreCase);

        public int GetHashCode((int Sheet, string Name) name) =>
            HashCode.Combine(name.Sheet, StringComparer.OrdinalIgnoreCase.GetHashCode(name.Name));
    }
}
