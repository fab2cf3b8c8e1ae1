using ClassKit.CellFormulas.Budget;

namespace ClassKit.CellFormulas.Functions;

/// <summary>What a text is cut at.</summary>
internal sealed class Delimiters
{
    private const int TicksPerLookUp = 24;

    private readonly Meter _meter;
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> _texts;
    private readonly int[] _lengths;

    public Delimiters(IEnumerable<string> texts, bool matchCase, Meter meter)
    {
        _meter = meter;
        var set = texts.ToHashSet(matchCase ? StringComparer.Ordinal : StringComparer.OrdinalIgnoreCase);
        meter.Spend(set.Count);
        _texts = set.GetAlternateLookup<ReadOnlySpan<char>>();
        _lengths = [.. set.Select(text => text.Length).Distinct().OrderDescending()];
    }

    public bool Any => _lengths.Length > 0;

    /// <summary>Where delimiters stand, from the left, none over another; the longest where several fit.</summary>
    public List<(int At, int Length)> CutsIn(string text)
    {
        var cuts = new List<(int At, int Length)>();
        for (var at = 0; at < text.Length; )
        {
            var length = LengthAt(text, at);
            if (length > 0)
                cuts.Add((at, length));
            at += Math.Max(1, length);
        }

        return cuts;
    }

    private int LengthAt(string text, int at)
    {
        foreach (var length in _lengths)
        {
            if (length > text.Length - at)
                continue;
            _meter.Take(TicksPerLookUp + length);
            if (_texts.Contains(text.AsSpan(at, length)))
                return length;
        }

        return 0;
    }
}
