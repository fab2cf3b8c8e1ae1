using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// The cells whose formulas are being computed, each because the one before reads it, and the circles that they run in:
/// every cell of a circle is <c>#REF!</c>, wherever one starts to read it.
/// </summary>
internal sealed class CellPath(PreparedWorkbook workbook, Run run)
{
    private readonly List<CellKey> _cells = [];

    // Beside each cell of the path: how far back on the path something that it depends on leads.
    private readonly List<int> _circleFrom = [];

    // Cells of circles that are done, with the earliest cell they lead back to, for those who read them while that one is still being
    // computed.
    private Dictionary<CellKey, CellKey>? _leadsTo;

    public int Count => _cells.Count;

    /// <summary>The cell whose formula is being evaluated.</summary>
    public CellKey Last => _cells[^1];

    /// <summary>True while a value read may be one of a circle that is not closed yet.</summary>
    public bool MayBeInCircle => _leadsTo is not null || _circleFrom.Exists(from => from != int.MaxValue);

    /// <summary>Forgets what is known of circles.</summary>
    public void Forget() => _leadsTo = null;

    /// <summary>Starts anew from no cell.</summary>
    public void Clear()
    {
        _cells.Clear();
        _circleFrom.Clear();
    }

    public int IndexOf(CellKey cell) => _cells.IndexOf(cell);

    public void Enter(CellKey cell)
    {
        _cells.Add(cell);
        _circleFrom.Add(int.MaxValue);
    }

    /// <summary>Leaves the last cell.</summary>
    /// <returns>The place on the path that something it depends on leads back to; far beyond the end where nothing does.</returns>
    public int Leave()
    {
        var from = _circleFrom[^1];
        _cells.RemoveAt(_cells.Count - 1);
        _circleFrom.RemoveAt(_circleFrom.Count - 1);
        return from;
    }

    /// <summary>Reading a cell of the path closes a circle.</summary>
    public CellValue CloseCircle(int from)
    {
        if (workbook.Workbook.IteratesCircles)
            run.Unsupported(Circle(from, isIterated: true));
        run.Reason ??= Circle(from, isIterated: false);
        Mark(from);
        return CellValue.FromError(CellError.Reference);
    }

    /// <summary>The value of a cell of a circle, once it is left.</summary>
    public CellValue LeaveCircle(CellKey key, int from)
    {
        if (from < _cells.Count)
            (_leadsTo ??= [])[key] = _cells[from];
        return CellValue.FromError(CellError.Reference);
    }

    /// <summary>Reading a cell whose circle is still open puts the reader into the circle.</summary>
    public void JoinCircle(CellKey key)
    {
        if (_leadsTo is null || !_leadsTo.TryGetValue(key, out var root))
            return;
        var from = _cells.IndexOf(root);
        if (from >= 0)
            Mark(from);
    }

    private void Mark(int from)
    {
        for (var at = from; at < _circleFrom.Count; at++)
            _circleFrom[at] = Math.Min(_circleFrom[at], from);
    }

    private Obstacle.Circle Circle(int from, bool isIterated)
    {
        const int Shown = 12;
        return new([.. _cells.Skip(from).Take(Shown).Select(workbook.AddressOf)], _cells.Count - from, isIterated);
    }
}
