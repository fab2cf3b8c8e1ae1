namespace ClassKit.Grading.Judging.Trials;

/// <summary>
/// What was worked out for a few things, each found by itself: there are fewer than a dozen, so that looking through them is quicker than
/// hashing them.
/// </summary>
internal sealed class Remembered<TThing, TValue>
    where TThing : class
{
    private List<(TThing Thing, TValue Value)>? _known;

    /// <summary>The value for a thing, worked out when it is asked for first.</summary>
    public TValue Of(TThing thing, Func<TThing, TValue> make)
    {
        foreach (var known in _known ??= [])
        {
            if (ReferenceEquals(known.Thing, thing))
                return known.Value;
        }
        var value = make(thing);
        _known.Add((thing, value));
        return value;
    }
}
