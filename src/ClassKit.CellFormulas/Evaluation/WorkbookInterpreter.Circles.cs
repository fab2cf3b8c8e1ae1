namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Formulas that depend on themselves: every cell of a circle is <c>#REF!</c>, wherever one starts to read it.</summary>
internal sealed partial class WorkbookInterpreter
{
    // Beside each cell of the path: how far back on the path something that it depends on leads.
    private readonly List<int> _circleFrom = [];

    // Cells of circles that are done, with the earliest cell they lead back to, for those who read them while that one is still being computed.
    private Dictionary<CellKey, CellKey>? _leadsTo;

    private CellValue CloseCircle(int from)
    {
        if (_workbook.Workbook.IteratesCircles) Unsupported("the workbook computes circles by going round them, and " + Words(from));
        Reason ??= Words(from);
        Mark(from);
        return CellValue.FromError(CellError.Reference);
    }

    private void Mark(int from)
    {
        for (var at = from; at < _circleFrom.Count; at++) _circleFrom[at] = Math.Min(_circleFrom[at], from);
    }

    private CellValue LeaveCircle(CellKey key, int from)
    {
        if (from < _path.Count) (_leadsTo ??= [])[key] = _path[from];
        return CellValue.FromError(CellError.Reference);
    }

    /// <summary>Reading a cell whose circle is still open puts the reader into the circle.</summary>
    private void JoinCircle(CellKey key)
    {
        if (_leadsTo is null || !_leadsTo.TryGetValue(key, out var root)) return;
        var from = _path.IndexOf(root);
        if (from >= 0) Mark(from);
    }

    private string Words(int from)
    {
        const int Shown = 12;
        var cells = _path.Skip(from).Take(Shown).Select(Show).ToList();
        if (_path.Count - from > Shown) cells.Add("...");
        cells.Add(Show(_path[from]));
        return "these cells depend on each other in a circle: " + string.Join(" → ", cells);
    }
}
