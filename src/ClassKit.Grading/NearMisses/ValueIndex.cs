using System.Numerics;

namespace ClassKit.Grading.NearMisses;

/// <summary>
/// Says where among thousands of numbers those stand that are a value. A dictionary of lists would take ten times the room, and a class has
/// an index for every part that somebody got wrong.
/// </summary>
/// <param name="most">How many numbers there can be.</param>
internal sealed class ValueIndex(int most)
{
    /// <summary>Numbers as near as this have the same key or neighbouring ones.</summary>
    private const double KeysPerUnit = 1e7;

    private readonly long[] _keys = new long[most];

    // Chains of places whose keys have the same remainder; places are counted from 1, and 0 ends a chain.
    private readonly int[] _before = new int[most];
    private readonly int[] _last = new int[BitOperations.RoundUpToPowerOf2((uint)most)];

    /// <summary>Takes in the number at a place; 0 is none that could be looked up.</summary>
    public void Add(int place, double value)
    {
        if (value == 0)
            return;
        var key = _keys[place] = KeyOf(value);
        ref var last = ref _last[Chain(key)];
        (_before[place], last) = (last, place + 1);
    }

    /// <summary>The places at which a value stands, the lower keys first, and of those with one key the earlier.</summary>
    public IEnumerable<int> Of(double value) =>
        value == 0 ? [] : Enumerable.Range(-1, 3).SelectMany(near => With(KeyOf(value) + near).Reverse());

    private IEnumerable<int> With(long key)
    {
        for (var at = _last[Chain(key)]; at > 0; at = _before[at - 1])
        {
            if (_keys[at - 1] == key)
                yield return at - 1;
        }
    }

    private int Chain(long key) => (int)(key & (_last.Length - 1));

    private static long KeyOf(double value) => (long)Math.Round(Math.Log(Math.Abs(value)) * KeysPerUnit, MidpointRounding.AwayFromZero);
}
