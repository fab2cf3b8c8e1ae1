using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>One row or column of an array, to search in.</summary>
internal readonly record struct Vector(ArrayValue Array, bool IsColumn, int Index)
{
    /// <summary>Shorter ones are looked through.</summary>
    private const int WorthAnIndex = 32;

    /// <summary>The places that can hold something; past them all is blank.</summary>
    public int Count => IsColumn ? Math.Min(Array.Rows, Array.StoredRows) : Math.Min(Array.Columns, Array.StoredColumns);

    /// <summary>All places, blank ones at the end included.</summary>
    public int Length => IsColumn ? Array.Rows : Array.Columns;

    public CellValue this[int at] => IsColumn ? Array[at, Index] : Array[Index, at];

    public static Vector Column(ArrayValue array, int column) => new(array, true, column);

    public static Vector Row(ArrayValue array, int row) => new(array, false, row);

    /// <summary>The array as one row or column; null if it is neither.</summary>
    public static Vector? Of(ArrayValue array) =>
        array.Columns == 1 ? Column(array, 0)
        : array.Rows == 1 ? Row(array, 0)
        : null;

    /// <summary>The first place (or the last, backwards) with that value; texts may be patterns. -1 for none.</summary>
    public int Exact(CellValue wanted, Meter meter, bool wildcards, bool backwards = false)
    {
        var pattern = wildcards && wanted.IsText && Wildcard.IsPattern(wanted.Text) ? wanted.Text : null;
        if (pattern is null && !backwards && Keys(meter) is { } index)
            return index.Find(wanted);
        for (var step = 0; step < Count; step++)
        {
            var at = backwards ? Count - 1 - step : step;
            var cell = this[at];
            if (cell.Kind != wanted.Kind)
                continue;
            if (pattern is null ? Operators.Compare(cell, wanted) == 0 : Wildcard.Matches(pattern, cell.Text, meter))
                return at;
        }

        return -1;
    }

    private KeyIndex? Keys(Meter meter) =>
        Count < WorthAnIndex
            ? null
            : Array.OnceWantedAgain((IsColumn, Index), (Keys: this, Meter: meter), static from => new KeyIndex(from.Keys, from.Meter));

    /// <summary>In ascending order, the last place not above. Values of other kinds are passed over. -1 for none.</summary>
    /// <remarks>
    /// Halving as spreadsheet programs do it, ending at the first equal value met, so that unsorted keys lead to the same wrong place;
    /// of neighbouring equals the last one is taken.
    /// </remarks>
    public int Ascending(CellValue wanted) => Halving(wanted, ascending: true);

    /// <summary>As <see cref="Ascending"/>, or the last place not below where the order is descending.</summary>
    public int Halving(CellValue wanted, bool ascending)
    {
        var (low, high) = (-1, Count);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            var at = middle;
            while (at < high && this[at].Kind != wanted.Kind)
                at++;
            if (at == high)
            {
                high = middle;
                continue;
            }

            var order = Operators.Compare(this[at], wanted);
            if (order == 0)
                return LastEqual(at, wanted);
            if (order < 0 == ascending)
                low = at;
            else
                high = middle;
        }

        return low;
    }

    /// <summary>In descending order, the last place not below, or the first that is equal. -1 for none.</summary>
    /// <remarks>From the start on, and no further than the first value below: so programs do it going down.</remarks>
    public int Descending(CellValue wanted)
    {
        var last = -1;
        for (var at = 0; at < Count; at++)
        {
            if (this[at].Kind != wanted.Kind)
                continue;
            var order = Operators.Compare(this[at], wanted);
            if (order == 0)
                return at;
            if (order < 0)
                break;
            last = at;
        }

        return last;
    }

    private int LastEqual(int at, CellValue wanted)
    {
        while (at + 1 < Count && this[at + 1].Kind == wanted.Kind && Operators.Compare(this[at + 1], wanted) == 0)
            at++;
        return at;
    }

    /// <summary>The place with the value, or else with the nearest below (or above) whatever the order; -1 for none.</summary>
    public int Nearest(CellValue wanted, bool above, bool backwards)
    {
        var best = -1;
        for (var step = 0; step < Count; step++)
        {
            var at = backwards ? Count - 1 - step : step;
            var cell = this[at];
            if (cell.Kind != wanted.Kind)
                continue;
            var order = Operators.Compare(cell, wanted);
            if (order == 0)
                return at;
            if (above ? order < 0 : order > 0)
                continue;
            if (best < 0 || (above ? Operators.Compare(cell, this[best]) < 0 : Operators.Compare(cell, this[best]) > 0))
                best = at;
        }

        return best;
    }
}
