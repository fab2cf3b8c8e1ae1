using ClassKit.CellFormulas.Calls;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// The cells to compute, the deepest on top. Chains of any length are followed: where the stack would grow too deep, the cell reached is
/// noted, the attempt is given up, and that cell is computed first.
/// </summary>
internal sealed class Agenda(Run run)
{
    private readonly Stack<CellKey> _waiting = new();
    private readonly HashSet<CellKey> _awaited = [];
    private CellKey? _deferred;

    public bool IsEmpty => _waiting.Count == 0;

    public CellKey Next => _waiting.Peek();

    /// <summary>True after an attempt was given up.</summary>
    public bool HasDeferred => _deferred is not null;

    /// <summary>Starts with one cell.</summary>
    public void Begin(CellKey cell)
    {
        _waiting.Clear();
        _awaited.Clear();
        _deferred = null;
        Await(cell);
    }

    /// <summary>True for a cell below the one on top: it waits for what reads it, so that there is a circle.</summary>
    public bool WaitsBelow(CellKey cell) => _waiting.Count > 1 && _awaited.Contains(cell);

    /// <summary>Gives up the attempt and notes the cell to compute first.</summary>
    public void Defer(CellKey cell)
    {
        _deferred ??= cell;
        run.Interrupt();
    }

    /// <summary>After an attempt: either its cell is done, or the one that was deferred comes first.</summary>
    public void Advance()
    {
        if (_deferred is not { } deeper)
        {
            _awaited.Remove(_waiting.Pop());
            return;
        }

        _deferred = null;
        run.TryAgain();
        Await(deeper);
    }

    private void Await(CellKey cell)
    {
        _waiting.Push(cell);
        _awaited.Add(cell);
    }
}
