using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>What is known of cells with the inputs at hand.</summary>
internal sealed class KnownCells
{
    private const int KeptCapacity = 500;

    private Dictionary<CellKey, CellValue> _values = new(16);
    private Dictionary<CellKey, ArrayValue>? _arrays;
    private Dictionary<CellKey, Obstacle>? _reasons;

    // Cells that were found to have no value, so that none of those that need them look again.
    private Dictionary<CellKey, (EvaluationStatus Status, Obstacle Reason)>? _ends;

    public void Forget()
    {
        // Clearing costs by the largest size ever reached.
        if (_values.Count > KeptCapacity)
            _values = new(16);
        else
            _values.Clear();
        (_arrays, _reasons, _ends) = (null, null, null);
    }

    public bool TryGet(CellKey key, out CellValue value) => _values.TryGetValue(key, out value);

    public CellValue Keep(CellKey key, CellValue value) => _values[key] = value;

    /// <summary>All values of the array formula in a cell, if it has more than one.</summary>
    public ArrayValue? ArrayOf(CellKey master) => _arrays?.GetValueOrDefault(master);

    public void Keep(CellKey master, ArrayValue array) => (_arrays ??= []).TryAdd(master, array);

    /// <summary>What led to a cell's error value.</summary>
    public Obstacle? ReasonOf(CellKey key) => _reasons?.GetValueOrDefault(key);

    public void KeepReason(CellKey key, Obstacle reason) => (_reasons ??= [])[key] = reason;

    /// <summary>Why a cell has no value.</summary>
    public bool HasEnd(CellKey key, out (EvaluationStatus Status, Obstacle Reason) end)
    {
        end = default;
        return _ends is not null && _ends.TryGetValue(key, out end);
    }

    public void KeepEnd(CellKey key, EvaluationStatus status, Obstacle reason) => (_ends ??= [])[key] = (status, reason);

    public CellKey[] Except(CellKey target)
    {
        var keys = new CellKey[_values.Count - (_values.ContainsKey(target) ? 1 : 0)];
        var at = 0;
        foreach (var key in _values.Keys)
        {
            if (key != target)
                keys[at++] = key;
        }

        return keys;
    }
}
