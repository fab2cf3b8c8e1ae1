using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Where each value first stands in a row or column, for those in which more than one value is looked for.</summary>
internal sealed class KeyIndex
{
    /// <summary>
    /// Numbers that are the same but for rounding noise (<see cref="Numbers.Same"/>) share all digits but these bits, or are neighbours.
    /// </summary>
    private const int NoisyBits = 8;

    private const int TicksPerKey = 8;

    private readonly Vector _keys;
    private readonly Dictionary<long, int> _numbers = [];
    private readonly int[] _nextAlike;
    private readonly Dictionary<string, int> _texts = new(StringComparer.OrdinalIgnoreCase);
    private int _true = -1;
    private int _false = -1;

    public KeyIndex(Vector keys, Meter meter)
    {
        _keys = keys;
        _nextAlike = new int[keys.Count];
        meter.Take((long)keys.Count * TicksPerKey);
        for (var at = keys.Count - 1; at >= 0; at--)
        {
            var key = keys[at];
            switch (key.Kind)
            {
                case CellValueKind.Number:
                    _nextAlike[at] = _numbers.GetValueOrDefault(Rough(key.Number), -1);
                    _numbers[Rough(key.Number)] = at;
                    break;
                case CellValueKind.Text:
                    _texts[key.Text] = at;
                    break;
                case CellValueKind.Logical when key.Logical:
                    _true = at;
                    break;
                case CellValueKind.Logical:
                    _false = at;
                    break;
            }
        }
    }

    /// <summary>The first place with that value; -1 for none.</summary>
    public int Find(CellValue wanted) =>
        wanted.Kind switch
        {
            CellValueKind.Number => Find(wanted.Number),
            CellValueKind.Text => _texts.GetValueOrDefault(wanted.Text, -1),
            CellValueKind.Logical => wanted.Logical ? _true : _false,
            _ => -1,
        };

    private int Find(double wanted)
    {
        var first = -1;
        for (var rough = Rough(wanted) - 1; rough <= Rough(wanted) + 1; rough++)
        {
            var at = _numbers.GetValueOrDefault(rough, -1);
            while (at >= 0 && !Numbers.Same(_keys[at].Number, wanted))
                at = _nextAlike[at];
            if (at >= 0 && (first < 0 || at < first))
                first = at;
        }

        return first;
    }

    private static long Rough(double number) => BitConverter.DoubleToInt64Bits(number == 0 ? 0 : number) >> NoisyBits;
}
