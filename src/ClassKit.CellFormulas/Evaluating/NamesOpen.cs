using ClassKit.CellFormulas.Formulas;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>The defined names being computed, and which of them are those of the formula at hand.</summary>
internal sealed class NamesOpen
{
    private const int DeepestName = 50;

    private readonly List<CellFormula> _formulas = [];
    private int _depth;
    private int _from;

    /// <summary>How far the references of the name at hand are moved.</summary>
    public (int Rows, int Columns) Offset { get; private set; }

    /// <summary>True inside of a name.</summary>
    public bool Any => _depth > 0;

    public void Clear()
    {
        _formulas.Clear();
        (Offset, _depth, _from) = (default, 0, 0);
    }

    /// <summary>Takes the names out of sight of another cell's formula.</summary>
    /// <returns>What <see cref="Show"/> brings back.</returns>
    public ((int Rows, int Columns) Offset, int Depth, int From) Hide()
    {
        var outer = (Offset, _depth, _from);
        (Offset, _depth, _from) = (default, 0, _formulas.Count);
        return outer;
    }

    public void Show(((int Rows, int Columns) Offset, int Depth, int From) outer) => (Offset, _depth, _from) = outer;

    /// <summary>True for a name that stands for itself, or is too deep in others.</summary>
    public bool IsEndless(CellFormula name) => _depth >= DeepestName || _formulas.IndexOf(name, _from) >= 0;

    /// <summary>Computes a name.</summary>
    public TValue Within<TValue>(CellFormula name, (int Rows, int Columns) offset, Func<TValue> compute)
    {
        var outer = Offset;
        Offset = offset;
        _depth++;
        _formulas.Add(name);
        var value = compute();
        _formulas.RemoveAt(_formulas.Count - 1);
        _depth--;
        Offset = outer;
        return value;
    }
}
